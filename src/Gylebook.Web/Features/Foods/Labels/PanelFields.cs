using Gylebook.Science.Foods.Labels;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>The lines of a panel that tell something about the beer, in the order in which packets print them.</summary>
/// <remarks>
/// Order: 21 CFR 101.9(d); Regulation (EU) No 1169/2011, annex XV (both from memory). American panels print potassium since
/// 2020, at the bottom, among the vitamins.
/// </remarks>
public static class PanelFields
{
    private static readonly IReadOnlyList<PanelField> Us =
    [
        PanelField.Serving("Serving size"),
        PanelField.Energy("Calories", "kcal", "kJ"),
        Fat("Total fat"),
        Saturated("Saturated fat"),
        PanelField.Mass("sodium", "Sodium", panel => panel.Sodium, (panel, figure) => panel with { Sodium = figure }, isSmall: true),
        Carbohydrate("Total carbohydrate"),
        Fibre("Dietary fibre"),
        Sugars("Total sugars"),
        PanelField.Mass("addedSugars", "Added sugars", panel => panel.AddedSugars, (panel, figure) => panel with { AddedSugars = figure }),
        SugarAlcohols("Sugar alcohol"),
        Protein,
    ];

    private static readonly IReadOnlyList<PanelField> Eu =
    [
        PanelField.Serving("Figures are for"),
        PanelField.Energy("Energy", "kJ", "kcal"),
        Fat("Fat"),
        Saturated("of which saturates"),
        Carbohydrate("Carbohydrate"),
        Sugars("of which sugars"),
        SugarAlcohols("of which polyols"),
        PanelField.Mass("starch", "of which starch", panel => panel.Starch, (panel, figure) => panel with { Starch = figure }),
        Fibre("Fibre"),
        Protein,
        PanelField.Mass("salt", "Salt", panel => panel.Salt, (panel, figure) => panel with { Salt = figure }),
    ];

    private static readonly IReadOnlyList<PanelField> UsFurther =
    [
        PanelField.Mass("potassium", "Potassium", panel => panel.Potassium, (panel, figure) => panel with { Potassium = figure }, isSmall: true),
    ];

    private static PanelField Protein =>
        PanelField.Mass("protein", "Protein", panel => panel.Protein, (panel, figure) => panel with { Protein = figure });

    /// <summary>The fields of a panel of that style that everybody is asked to copy: few enough for a thumb.</summary>
    public static IReadOnlyList<PanelField> Of(PanelStyle style) => style == PanelStyle.Us ? Us : Eu;

    /// <summary>Lines further down that move no gravity, for those who want them; none for a style that does not print them.</summary>
    public static IReadOnlyList<PanelField> FurtherDown(PanelStyle style) => style == PanelStyle.Us ? UsFurther : [];

    private static PanelField Fat(string name) =>
        PanelField.Mass("fat", name, panel => panel.Fat, (panel, figure) => panel with { Fat = figure });

    private static PanelField Saturated(string name) =>
        PanelField.Mass("saturated", name, panel => panel.Saturated, (panel, figure) => panel with { Saturated = figure });

    private static PanelField Carbohydrate(string name) =>
        PanelField.Mass("carbohydrate", name, panel => panel.Carbohydrate, (panel, figure) => panel with { Carbohydrate = figure });

    private static PanelField Fibre(string name) =>
        PanelField.Mass("fibre", name, panel => panel.Fibre, (panel, figure) => panel with { Fibre = figure });

    private static PanelField Sugars(string name) =>
        PanelField.Mass("sugars", name, panel => panel.Sugars, (panel, figure) => panel with { Sugars = figure });

    private static PanelField SugarAlcohols(string name) =>
        PanelField.Mass("sugarAlcohols", name, panel => panel.SugarAlcohols, (panel, figure) => panel with { SugarAlcohols = figure });
}
