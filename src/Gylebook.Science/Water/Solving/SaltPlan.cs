namespace Gylebook.Science.Water;

/// <summary>An ion the brewer wants so much of.</summary>
/// <param name="Ion">Which.</param>
/// <param name="MilligramsPerLitre">How much, mg/L.</param>
/// <param name="Weight">How much a miss matters beside the others; 1 as a rule.</param>
public sealed record IonTarget(Ion Ion, double MilligramsPerLitre, double Weight = 1);

/// <summary>A salt at hand.</summary>
/// <param name="Salt">Which.</param>
/// <param name="MostGramsPerLitre">No more than this.</param>
/// <param name="LeastGramsPerLitre">No less than this.</param>
/// <param name="Price">Added to the miss for each g/L, so that fewer salts win a tie.</param>
public sealed record SaltOffer(
    BrewingSalt Salt, double MostGramsPerLitre, double LeastGramsPerLitre = 0, double Price = SaltSolver.UsualPrice);

/// <summary>An acid at hand, to take alkalinity away.</summary>
/// <param name="Acid">Which.</param>
/// <param name="MostUnitsPerLitre">No more mL (or grams) than this in a litre.</param>
/// <param name="Price">Added to the miss for each mL/L.</param>
public sealed record AcidOffer(AcidAsSold Acid, double MostUnitsPerLitre, double Price = SaltSolver.UsualPrice);

/// <summary>Another water that may replace part of the first.</summary>
/// <param name="Water">Its ions; distilled as a rule.</param>
/// <param name="MostShare">No larger share than this.</param>
/// <param name="Price">Added to the miss for a share of 1.</param>
public sealed record DilutionOffer(IonProfile Water, double MostShare = 1, double Price = SaltSolver.UsualPrice);

/// <summary>What is to be solved: from which water, to which ions, with what.</summary>
/// <param name="Source">The water as it comes.</param>
/// <param name="Targets">Ions wanted; an ion not named may fall out as it will.</param>
/// <param name="Salts">Salts at hand.</param>
/// <param name="Acids">Acids at hand; used only if bicarbonate has a target.</param>
/// <param name="Dilution">Another water at hand, or null.</param>
/// <param name="AcidPh">pH at which acids are counted: that of the mash they go to.</param>
public sealed record SaltPlan(
    IonProfile Source,
    IReadOnlyList<IonTarget> Targets,
    IReadOnlyList<SaltOffer> Salts,
    IReadOnlyList<AcidOffer>? Acids = null,
    DilutionOffer? Dilution = null,
    double AcidPh = 5.4);

/// <summary>A salt found.</summary>
/// <param name="Salt">Which.</param>
/// <param name="GramsPerLitre">How much.</param>
public sealed record SaltFound(BrewingSalt Salt, double GramsPerLitre);

/// <summary>An acid found.</summary>
/// <param name="Acid">Which.</param>
/// <param name="UnitsPerLitre">mL, or grams of a powder, in a litre.</param>
public sealed record AcidFound(AcidAsSold Acid, double UnitsPerLitre);

/// <summary>Why a target is not reached.</summary>
public enum MissReason
{
    /// <summary>There is too little, and nothing offered brings this ion.</summary>
    NothingBringsIt,

    /// <summary>There is too much, and nothing offered takes it away.</summary>
    NothingRemovesIt,

    /// <summary>An offer stands at its own limit and would have to go further.</summary>
    OfferAtLimit,

    /// <summary>Going closer would carry another target further off.</summary>
    OtherTargets,
}

/// <summary>A target that is not reached, and the limit that binds.</summary>
/// <param name="Ion">Which ion.</param>
/// <param name="Target">Wanted, mg/L.</param>
/// <param name="Reached">Reached, mg/L.</param>
/// <param name="Reason">Why.</param>
/// <param name="Limit">Id of the offer at its limit (<c>dilution</c> for the other water), or the ions that stand against it; empty if neither.</param>
public sealed record TargetMiss(Ion Ion, double Target, double Reached, MissReason Reason, string Limit);

/// <summary>Salts, acids and dilution found.</summary>
/// <param name="Salts">Salts in use.</param>
/// <param name="Acids">Acids in use.</param>
/// <param name="ShareDiluted">Share of the liquor that is the other water.</param>
/// <param name="Ions">The liquor then.</param>
/// <param name="Misses">Targets not reached, within 2 % of the target or 1 mg/L.</param>
/// <param name="Objective">Weighted squared relative miss plus prices: smaller is better.</param>
/// <param name="Diagnoses">What to look at: free acid, chalk that will not dissolve.</param>
public sealed record SaltSolution(
    IReadOnlyList<SaltFound> Salts,
    IReadOnlyList<AcidFound> Acids,
    double ShareDiluted,
    IonProfile Ions,
    IReadOnlyList<TargetMiss> Misses,
    double Objective,
    IReadOnlyList<WaterDiagnosis> Diagnoses);
