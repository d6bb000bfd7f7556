namespace Gylebook.Science.Mashing;

/// <summary>A plant whose starch we know the opening temperature of.</summary>
public enum Cereal
{
    /// <summary>Barley, malted or not.</summary>
    Barley,

    /// <summary>Wheat, spelt included.</summary>
    Wheat,

    /// <summary>Rye.</summary>
    Rye,

    /// <summary>Oats.</summary>
    Oats,

    /// <summary>Rice.</summary>
    Rice,

    /// <summary>Maize.</summary>
    Maize,

    /// <summary>Sorghum.</summary>
    Sorghum,

    /// <summary>Millet.</summary>
    Millet,

    /// <summary>Buckwheat.</summary>
    Buckwheat,

    /// <summary>Quinoa.</summary>
    Quinoa,

    /// <summary>Potato.</summary>
    Potato,
}
