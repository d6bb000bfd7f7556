using Gylebook.Engine.Readouts;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>A salt to weigh out.</summary>
/// <param name="Salt">Which.</param>
/// <param name="Grams">How much.</param>
public sealed record SaltDose(BrewingSalt Salt, double Grams);

/// <summary>An acid to measure out.</summary>
/// <param name="Acid">Which.</param>
/// <param name="Units">mL, or grams of a powder.</param>
public sealed record AcidDose(OfferedAcid Acid, double Units);

/// <summary>The liquor of one place, treated.</summary>
/// <param name="Litres">At 20 °C; 0 when there is none of it.</param>
/// <param name="ShareDistilled">Share of it to pour as distilled water, on top of the sources; 0 in kettle and package, where thinned liquor arrives.</param>
/// <param name="Salts">Salts to weigh out.</param>
/// <param name="Acids">Acids to measure out.</param>
/// <param name="Unsoured">Ions with the salts, before any acid.</param>
/// <param name="Ions">Ions with salts and acids: bicarbonate is what alkalinity is left, below zero free acid.</param>
/// <param name="Ph">pH at 20 °C in a closed vessel; null for a mash, whose grain sets it.</param>
public sealed record TreatedLiquor(
    double Litres, double ShareDistilled, IReadOnlyList<SaltDose> Salts, IReadOnlyList<AcidDose> Acids,
    IonProfile Unsoured, IonProfile Ions, double? Ph)
{
    /// <summary>Ions wanted of it and not reached.</summary>
    public IReadOnlyList<TargetMiss> Misses { get; init; } = [];

    /// <summary>No liquor.</summary>
    public static TreatedLiquor None { get; } = new(0, 0, [], [], IonProfile.Distilled, IonProfile.Distilled, null);
}

/// <summary>What came of a water plan: what to weigh out, and what the liquor is then.</summary>
public sealed record WaterOutcome
{
    /// <summary>The plan's name.</summary>
    public required string Name { get; init; }

    /// <summary>The plan it came of.</summary>
    public required WaterPlan Plan { get; init; }

    /// <summary>The litres and the grist it was for.</summary>
    public required LiquorNeed Need { get; init; }

    /// <summary>The waters blended.</summary>
    public required SourceLiquor Source { get; init; }

    /// <summary>Its cations against its anions, in per cent: (cations − anions)/(cations + anions).</summary>
    public double ChargeBalancePercent => ChargeBalance.Of(Source.Ions).ErrorPercent;

    /// <summary>The liquor the mash starts in.</summary>
    public required TreatedLiquor Mash { get; init; }

    /// <summary>The liquor the grain is rinsed with.</summary>
    public required TreatedLiquor Sparge { get; init; }

    /// <summary>Both together with what goes into the kettle, counted on their litres: before grain holds or steam leaves.</summary>
    public required TreatedLiquor Kettle { get; init; }

    /// <summary>The packaged beer, as far as liquor goes: its salts, and the ions that come there; nothing when no salt is offered for it.</summary>
    public TreatedLiquor Package { get; init; } = TreatedLiquor.None;

    /// <summary>Acid for the wort in the kettle; null when no pH is wanted of it, or its pH before is not known.</summary>
    public WortSouring? Wort { get; init; }

    /// <summary>pH of the mash with what the plan puts in, sample cooled to 20 °C; with a reading only the step from the measured mash has a width; null without a grist that has titrations.</summary>
    public required Band? MashPh { get; init; }

    /// <summary>What a meter read of the mash, and what that teaches; null without a reading.</summary>
    public MashReadingReport? MashReading { get; init; }

    /// <summary>What to put into the mash now; null without a reading, or when its pH is where it is wanted.</summary>
    public MashMend? Mend { get; init; }

    /// <summary>What can hurt, and limits of the models.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>What is wrong, doubtful or cannot be reached.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>Acid that brings the wort in the kettle to a pH.</summary>
/// <param name="From">pH before, at 20 °C: as measured, or the mash's.</param>
/// <param name="Measured">Whether a meter said so.</param>
/// <param name="To">pH wanted.</param>
/// <param name="Amount">mL (g of a powder), at the ends of the wort buffers in print and of the pH before.</param>
/// <param name="Units">What to measure out: the likely amount in steps of the measure, within the limit.</param>
public sealed record WortSouring(Band From, bool Measured, double To, Band Amount, double Units);

/// <summary>What one meter reading of the mash says.</summary>
/// <param name="Meter">What was read.</param>
/// <param name="PhAt20C">The same as a sample at 20 °C would read.</param>
/// <param name="Forecast">What was forecast for that mash before the reading, at 20 °C.</param>
/// <param name="Shift">By how much the whole grist's distilled-water pH is shifted against the plan's figures.</param>
/// <param name="Malts">The malts the reading is laid to, with what it teaches of them; empty when it cannot be laid to any.</param>
public sealed record MashReadingReport(MeterReading Meter, double PhAt20C, double Forecast, Band Shift, IReadOnlyList<LearnedMalt> Malts);

/// <summary>What a reading teaches of a malt: a line to put into the next plan.</summary>
/// <param name="Malt">Which.</param>
/// <param name="DistilledPh">Its pH in distilled water; the ends belong to the ends of the buffers in print.</param>
/// <param name="Buffer">The buffer the likely figure goes with, mEq/(kg·pH).</param>
public sealed record LearnedMalt(Malt Malt, Band DistilledPh, double Buffer);

/// <summary>What brings a measured mash to the pH wanted.</summary>
/// <param name="Acid">The acid; null when it is a salt.</param>
/// <param name="Salt">The alkaline salt; null when it is an acid.</param>
/// <param name="Amount">How much, mL or g, for the grist as stated and at both ends of the buffers in print.</param>
/// <param name="Units">What to measure out: the likely amount in steps of the measure, within the limits of the offer.</param>
/// <param name="Ph">pH then, at 20 °C.</param>
public sealed record MashMend(OfferedAcid? Acid, BrewingSalt? Salt, Band Amount, double Units, Band Ph);
