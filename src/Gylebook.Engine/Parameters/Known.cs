namespace Gylebook.Engine.Parameters;

/// <summary>The parameters every run has, in the order of a draw; those of single ingredients follow after them.</summary>
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

    /// <summary>Where between the two series the limit lies: 0 the un-mixed study, 1 the plateau.</summary>
    TowardsPlateau,

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

    /// <summary>Protein that stays dissolved, in a malt's laboratory extract before it is scaled to the certificate.</summary>
    MaltSolubleProtein,

    /// <summary>Protein in it that the boil can throw.</summary>
    MaltCoagulable,

    /// <summary>Minerals in it.</summary>
    MaltMinerals,

    /// <summary>Sugar that a base malt brings ready made, of its carbohydrate.</summary>
    OwnSugarOfBase,

    /// <summary>The same of unmalted grain.</summary>
    OwnSugarOfRaw,

    /// <summary>Where in the published span of its temperatures raw grain's starch opens: 0 all at the top, 1 all at the bottom.</summary>
    RawGrainOpens,

    /// <summary>The same of caramel and dextrin malt.</summary>
    OwnSugarOfCaramel,

    /// <summary>The same of roasted malt.</summary>
    OwnSugarOfRoast,

    /// <summary>Share of its own carbohydrate that ferments, base malt.</summary>
    OwnFermentableOfBase,

    /// <summary>The same of caramel malt of 10 °L and less.</summary>
    OwnFermentableOfLightCaramel,

    /// <summary>The same of caramel malt of 40 °L.</summary>
    OwnFermentableOfAmberCaramel,

    /// <summary>The same of caramel malt of 120 °L and more.</summary>
    OwnFermentableOfDarkCaramel,

    /// <summary>The same of dextrin malt.</summary>
    OwnFermentableOfDextrinMalt,

    /// <summary>The same of roasted malt.</summary>
    OwnFermentableOfRoast,

    /// <summary>Limit of attenuation of a Congress mash's own wort, a share.</summary>
    CongressLimit,

    /// <summary>By how much the mash is warmer than was meant, K.</summary>
    MashWarmer,

    /// <summary>By how much a stand is warmer than was meant, K.</summary>
    StandWarmer,

    /// <summary>Water in hops.</summary>
    HopWater,

    /// <summary>What of hops dissolves.</summary>
    HopSoluble,

    /// <summary>Kilograms of malt that a kilogram of malt extract's solids stands for where something is buffered.</summary>
    ExtractAsMalt,

    /// <summary>Warming of the mash as dry grain wets, K at 4 % moisture.</summary>
    SlakingKelvins,

    /// <summary>Share of the kettle's power that reaches the liquid.</summary>
    HeatShare,

    /// <summary>Wort in the bag at the moment of the lift, against the drained bag.</summary>
    LiftHeldFactor,

    /// <summary>pH of wort from malt alone before the boil.</summary>
    PhOfMaltWort,

    /// <summary>pH of an ordinary wort after the boil.</summary>
    PhOfOrdinaryWort,

    /// <summary>By how much the boil lowers pH.</summary>
    PhBoilDrop,

    /// <summary>The same of wort that was soured: whether it does is not known.</summary>
    PhBoilDropOfSourWort,

    /// <summary>Buffering of wort, mEq/(kg of malt·pH).</summary>
    WortBuffering,

    /// <summary>Buffering of the mash, mEq/(kg of malt·pH).</summary>
    MashBuffering,

    /// <summary>Buffering of beer, mEq/(kg of malt·pH).</summary>
    BeerBuffering,

    /// <summary>Base that dry hops bring, mEq/g.</summary>
    DryHopBase,

    /// <summary>Potassium that malt brings into a wort of 12 °P, mg/L; so are the ions that follow.</summary>
    MaltPotassium,

    /// <summary>Magnesium.</summary>
    MaltMagnesium,

    /// <summary>Calcium.</summary>
    MaltCalcium,

    /// <summary>Sodium.</summary>
    MaltSodium,

    /// <summary>Phosphorus, as the element.</summary>
    MaltPhosphorus,

    /// <summary>Chloride.</summary>
    MaltChloride,

    /// <summary>Sulphate.</summary>
    MaltSulphate,

    /// <summary>pH of a top-fermented beer to which no acid was added.</summary>
    PhOfTopFermented,

    /// <summary>The same of a bottom-fermented beer.</summary>
    PhOfBottomFermented,

    /// <summary>Living cells in a millilitre of settled slurry.</summary>
    SlurryCellsPerMillilitre,

    /// <summary>Living cells in a gram of dry yeast.</summary>
    PitchCellsPerGram,
}
