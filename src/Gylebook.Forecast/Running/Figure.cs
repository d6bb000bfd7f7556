namespace Gylebook.Forecast.Running;

/// <summary>The numbers a run is read for, one set a packaged portion.</summary>
public enum Figure
{
    /// <summary>Extract over grist, per cent, when all wort has run off.</summary>
    MashYield,

    /// <summary>Litres at 20 °C before the boil.</summary>
    CopperUpLitres,

    /// <summary>Gravity before the boil.</summary>
    CopperUpGravity,

    /// <summary>Litres at 20 °C when the flame goes off.</summary>
    KnockOutLitres,

    /// <summary>Gravity when the flame goes off.</summary>
    KnockOutGravity,

    /// <summary>Litres at 20 °C in the fermenter.</summary>
    CastLitres,

    /// <summary>Gravity in the fermenter.</summary>
    CastGravity,

    /// <summary>Original gravity, all in.</summary>
    OriginalGravity,

    /// <summary>Gravity when fermentation ends.</summary>
    FinalGravity,

    /// <summary>(OE − AE) / OE, per cent.</summary>
    ApparentAttenuation,

    /// <summary>(OE − RE) / OE, per cent.</summary>
    RealAttenuation,

    /// <summary>Alcohol by volume when racked, per cent.</summary>
    AlcoholAtRacking,

    /// <summary>Litres of sludge, solids and the beer they hold.</summary>
    SludgeLitres,

    /// <summary>Litres at 20 °C packaged.</summary>
    PackagedLitres,

    /// <summary>Volumes of gas that sugar makes in the package.</summary>
    RefermentableVolumes,

    /// <summary>Volumes of gas as served.</summary>
    CarbonationVolumes,

    /// <summary>Alcohol by volume as served, per cent.</summary>
    AlcoholByVolume,

    /// <summary>Bitterness as served, IBU.</summary>
    Bitterness,

    /// <summary>Colour as served, SRM.</summary>
    Colour,

    /// <summary>Energy as served, kcal per 100 mL.</summary>
    Energy,

    /// <summary>Carbohydrate as served, g per 100 mL.</summary>
    Carbohydrate,

    /// <summary>Sodium as served that foods and salts brought, mg/L.</summary>
    Sodium,

    /// <summary>Litres in the mash with the grain.</summary>
    MashLitresWithSolids,

    /// <summary>Litres in the fermenter with all solids, before any is racked off.</summary>
    FermenterLitresWithSolids,

    /// <summary>Bitterness as served by the model that is not shown, IBU.</summary>
    OtherBitterness,
}
