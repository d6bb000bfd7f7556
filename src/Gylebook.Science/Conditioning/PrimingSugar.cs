namespace Gylebook.Science.Conditioning;

/// <summary>A sugar that yeast turns into gas in the package.</summary>
public enum PrimingSugar
{
    /// <summary>Household sugar.</summary>
    Sucrose,

    /// <summary>Malt sugar.</summary>
    Maltose,

    /// <summary>Three glucoses in a row; some yeasts leave it.</summary>
    Maltotriose,

    /// <summary>Glucose without water.</summary>
    Glucose,

    /// <summary>Glucose with its water of crystallisation, as dextrose is sold.</summary>
    GlucoseMonohydrate,

    /// <summary>Fruit sugar.</summary>
    Fructose,
}
