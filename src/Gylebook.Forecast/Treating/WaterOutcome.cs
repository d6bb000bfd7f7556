using Gylebook.Engine.Readouts;
using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Treating;

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
    public MashReadingTold? MashReading { get; init; }

    /// <summary>What to put into the mash now; null without a reading, or when its pH is where it is wanted.</summary>
    public MashMend? Mend { get; init; }

    /// <summary>What can hurt, and limits of the models.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>What is wrong, doubtful or cannot be reached.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}
