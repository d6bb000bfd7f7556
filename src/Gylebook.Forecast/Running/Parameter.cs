namespace Gylebook.Forecast.Running;

/// <summary>A figure that a lab or a brewer could measure again; a run reads it from its draw.</summary>
/// <param name="Id">Stable id: draws are keyed by it.</param>
/// <param name="Median">What the engine takes when it does not draw.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where the figure comes from.</param>
/// <param name="Status">How far to trust it.</param>
public sealed record Parameter(string Id, double Median, string Unit, string Source, string Status);

/// <summary>Places in a draw of the parameters every run has; those of single ingredients follow after them.</summary>
public enum Known
{
    /// <summary>Share of the grist's laboratory extract that the mash reaches.</summary>
    Conversion,

    /// <summary>Wort held, kg per kg of the grist's dry matter that cannot dissolve.</summary>
    WortHeld,

    /// <summary>Share of the held wort that a rinse mixes with.</summary>
    RinsingShare,

    /// <summary>Litres below the tun's outlet.</summary>
    TunDeadSpace,

    /// <summary>Litres of water at 20 °C boiled off per hour.</summary>
    Evaporation,

    /// <summary>Litres of clear wort the kettle keeps.</summary>
    KettleLeftBehind,

    /// <summary>Share of break and food solids the kettle keeps.</summary>
    KettleSolidsLeft,

    /// <summary>Litres of wort per kilogram of whole hops.</summary>
    HeldBySpentHops,

    /// <summary>Litres of clear beer left when racking.</summary>
    RackingLeftBehind,

    /// <summary>Apparent limit of attenuation of a pale malt's wort at this mash, per cent.</summary>
    LimitOfAttenuation,

    /// <summary>Maltose in what the mash makes fermentable.</summary>
    SpectrumMaltose,

    /// <summary>Maltotriose in what the mash makes fermentable.</summary>
    SpectrumMaltotriose,

    /// <summary>Glucose in what the mash makes fermentable.</summary>
    SpectrumGlucose,

    /// <summary>Share of the foods' solids fine enough to pass the bag.</summary>
    FinesThroughBag,

    /// <summary>Share of the fat that stays with the grain.</summary>
    FatWithGrain,

    /// <summary>Share of coagulable protein thrown as break.</summary>
    BreakShare,

    /// <summary>Kilograms of beer per kilogram of settled yeast.</summary>
    YeastHold,

    /// <summary>Kilograms of beer per kilogram of settled break.</summary>
    BreakHold,

    /// <summary>Kilograms of beer per kilogram of settled hop debris.</summary>
    HopHold,

    /// <summary>Kilograms of beer per kilogram of settled raw starch.</summary>
    RawStarchHold,

    /// <summary>Share of the held beer that cold and waiting give back.</summary>
    CrashGain,

    /// <summary>Share of the fat that stays dispersed in the beer.</summary>
    FatDispersed,

    /// <summary>Multiplies the published utilisation of hops.</summary>
    UtilisationFactor,

    /// <summary>Solids of hops, share of what was weighed.</summary>
    HopSolids,

    /// <summary>Kilograms per litre of the grain's solid matter.</summary>
    GrainDensity,

    /// <summary>Kilograms per litre of the foods' solid matter.</summary>
    FoodDensity,

    /// <summary>Kilograms per litre of the hops' solid matter.</summary>
    HopDensity,

    /// <summary>Kilograms per litre of break.</summary>
    BreakDensity,

    /// <summary>Kilograms per litre of dry yeast.</summary>
    YeastDensity,

    /// <summary>Kilograms per litre of fat.</summary>
    FatDensity,
}
