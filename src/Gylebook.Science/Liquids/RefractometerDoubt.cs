namespace Gylebook.Science.Liquids;

/// <summary>Why a final gravity from a refractometer may be wrong by more than its usual 0.003.</summary>
[Flags]
public enum RefractometerDoubt
{
    /// <summary>Inside the beers the form was fitted to.</summary>
    None = 0,

    /// <summary>The wort was weaker or stronger than any in the fit.</summary>
    OriginalOutsideFit = 1,

    /// <summary>The final gravity is lower or higher than any in the fit.</summary>
    FinalOutsideFit = 2,

    /// <summary>Less or more of the extract has gone than in any beer of the fit.</summary>
    AttenuationOutsideFit = 4,

    /// <summary>So little has fermented that the form is known to fail: take a hydrometer.</summary>
    StillFermenting = 8,
}
