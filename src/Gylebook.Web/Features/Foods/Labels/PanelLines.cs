using Gylebook.Science.Foods.Labels;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A line of a nutrition panel as packets print it.</summary>
/// <param name="Key">Its key in a food file: <c>fat</c>.</param>
/// <param name="Name">What the packet calls it.</param>
/// <param name="Units">Its units, the usual one first.</param>
public sealed record PanelLine(string Key, string Name, IReadOnlyList<string> Units)
{
    /// <summary>Where it stands in a food file.</summary>
    public string Path => $"{LabelDesk.Panel}.{Key}";

    /// <summary>Whether packets print it as "less than".</summary>
    public bool MayBeLess { get; init; } = true;

    /// <summary>Whether it is an energy, and no mass.</summary>
    public bool IsEnergy => Key == "energy";
}

/// <summary>The lines of a panel that tell something about the beer, in the order in which packets print them.</summary>
/// <remarks>
/// Order: 21 CFR 101.9(d); Regulation (EU) No 1169/2011, annex XV (both from memory). American panels print potassium since
/// 2020, at the bottom, among the vitamins.
/// </remarks>
public static class PanelLines
{
    private static readonly string[] Grams = ["g", "mg"];
    private static readonly string[] Milligrams = ["mg", "g"];

    private static readonly IReadOnlyList<PanelLine> Us =
    [
        new("serving", "Serving size", Grams) { MayBeLess = false },
        new("energy", "Calories", ["kcal", "kJ"]) { MayBeLess = false },
        new("fat", "Total fat", Grams),
        new("saturated", "Saturated fat", Grams),
        new("sodium", "Sodium", Milligrams),
        new("carbohydrate", "Total carbohydrate", Grams),
        new("fibre", "Dietary fibre", Grams),
        new("sugars", "Total sugars", Grams),
        new("addedSugars", "Added sugars", Grams),
        new("sugarAlcohols", "Sugar alcohol", Grams),
        new("protein", "Protein", Grams),
    ];

    private static readonly IReadOnlyList<PanelLine> Eu =
    [
        new("serving", "Figures are for", Grams) { MayBeLess = false },
        new("energy", "Energy", ["kJ", "kcal"]) { MayBeLess = false },
        new("fat", "Fat", Grams),
        new("saturated", "of which saturates", Grams),
        new("carbohydrate", "Carbohydrate", Grams),
        new("sugars", "of which sugars", Grams),
        new("sugarAlcohols", "of which polyols", Grams),
        new("starch", "of which starch", Grams),
        new("fibre", "Fibre", Grams),
        new("protein", "Protein", Grams),
        new("salt", "Salt", Grams),
    ];

    private static readonly IReadOnlyList<PanelLine> UsFurther = [new("potassium", "Potassium", Milligrams)];

    /// <summary>The lines of a panel of that style that everybody is asked to copy: few enough for a thumb.</summary>
    public static IReadOnlyList<PanelLine> Of(PanelStyle style) => style == PanelStyle.Us ? Us : Eu;

    /// <summary>Lines further down that move no gravity, for those who want them; none for a style that does not print them.</summary>
    public static IReadOnlyList<PanelLine> FurtherDown(PanelStyle style) => style == PanelStyle.Us ? UsFurther : [];
}
