using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Makeups;

/// <summary>A food where it goes in: its starch is the part that depends on the place.</summary>
/// <remarks>
/// In the mash, open starch meets enzymes and raw starch stays with the grain. In the kettle heat opens it and nothing
/// converts it: haze. In the cold, starch that cooking has opened is haze too, and raw starch settles. Outside the mash a
/// share of the starch, the family's, never leaves the particles it sits in: it settles with the food's solids and holds beer
/// as they do. All that counts as
/// mass is one kilogram in any draw: whoever draws lets water give way.
/// </remarks>
/// <param name="figures">Where its <see cref="FoodFigure"/>s stand.</param>
/// <param name="starchIsOpen">Whether its starch is gelatinised, or gelatinises in an ordinary mash.</param>
/// <param name="place">Where it goes in.</param>
/// <param name="kilograms">How much.</param>
public sealed class FoodInPlace(SlotBlock figures, bool starchIsOpen, FoodPlace place, double kilograms) : Makeup
{
    /// <summary>How many figures describe a food.</summary>
    public const int FigureCount = (int)FoodFigure.AcidScale + 1;

    /// <inheritdoc/>
    public override void Fill(Draw draw, MaltExtracts extracts, out Wort all)
    {
        OfOneKilogram(draw.Of(figures, FigureCount), starchIsOpen, place, out all);
        all.Multiply(kilograms);
    }

    /// <summary>Puts another value of one of its figures into a draw.</summary>
    public void Put(FoodFigure figure, double value, Span<double> into) => into[figures.First + (int)figure] = value;

    /// <summary>Puts other figures of this food into a draw.</summary>
    public void Draw(ReadOnlySpan<double> drawn, Span<double> into) => drawn.CopyTo(into.Slice(figures.First, FigureCount));

    /// <summary>So many kilograms of a food by its figures.</summary>
    public static Wort Of(ReadOnlySpan<double> figures, bool starchIsOpen, FoodPlace place, double kilograms)
    {
        OfOneKilogram(figures, starchIsOpen, place, out Wort all);
        all.Multiply(kilograms);
        return all;
    }

    private static void OfOneKilogram(ReadOnlySpan<double> figures, bool starchIsOpen, FoodPlace place, out Wort one)
    {
        one = default;
        foreach ((FoodFigure figure, Component component) in Dissolving)
        {
            one[component] = figures[(int)figure];
        }

        double starch = figures[(int)FoodFigure.Starch], insoluble = figures[(int)FoodFigure.Insoluble];
        double trapped = place == FoodPlace.Mash ? 0 : starch * figures[(int)FoodFigure.StarchThatSettles];
        double settles = insoluble + trapped;
        one[Component.FoodSolids] = settles;
        one[StarchAs(starchIsOpen, place)] += starch - trapped;
        one[Component.Sodium] = figures[(int)FoodFigure.Sodium];
        one[Component.Potassium] = figures[(int)FoodFigure.Potassium];
        one[Component.FoodCalcium] = figures[(int)FoodFigure.Calcium];
        one[Component.FoodMagnesium] = figures[(int)FoodFigure.Magnesium];
        one[Component.Phosphorus] = figures[(int)FoodFigure.Phosphorus];
        one[Component.Chloride] = figures[(int)FoodFigure.Chloride];
        Sour(ref one, figures[(int)FoodFigure.AcidScale], figures[(int)FoodFigure.OwnPh]);
        one[Component.SettledHold] = settles * figures[(int)FoodFigure.SettledHold];
        one[Component.BagHold] = place == FoodPlace.Mash ? insoluble * figures[(int)FoodFigure.BagHold] : 0;
    }

    /// <summary>More or less acid than is likely gives way to water; the base that is paired with it anchors it at the food's own pH.</summary>
    private static void Sour(ref Wort one, double scale, double ownPh)
    {
        double acid = 0;
        for (Component each = Component.LacticAcid; each <= Component.QuinicAcid; each++)
        {
            acid += one[each];
            one[each] *= scale;
        }

        if (acid > 0)
        {
            one[Component.Water] -= (scale - 1) * acid;
            one[Component.PairedBase] = AcidsCarried.PairedBaseAt(one, ownPh);
        }
    }

    private static Component StarchAs(bool open, FoodPlace place) => place switch
    {
        FoodPlace.Mash => open ? Component.Starch : Component.RawStarch,
        FoodPlace.Kettle => Component.HazeStarch,
        _ => open ? Component.HazeStarch : Component.RawStarch,
    };

    private static readonly (FoodFigure Figure, Component Component)[] Dissolving =
    [
        (FoodFigure.Water, Component.Water), (FoodFigure.Sucrose, Component.Sucrose), (FoodFigure.Glucose, Component.Glucose), (FoodFigure.Fructose, Component.Fructose),
        (FoodFigure.Maltose, Component.Maltose), (FoodFigure.Lactose, Component.Lactose), (FoodFigure.Polyols, Component.Polyols),
        (FoodFigure.Dextrin, Component.Dextrin), (FoodFigure.SolubleProtein, Component.Protein),
        (FoodFigure.Lactic, Component.LacticAcid), (FoodFigure.Acetic, Component.AceticAcid), (FoodFigure.Citric, Component.CitricAcid),
        (FoodFigure.Malic, Component.MalicAcid), (FoodFigure.Tartaric, Component.TartaricAcid), (FoodFigure.Quinic, Component.QuinicAcid),
        (FoodFigure.Minerals, Component.Minerals), (FoodFigure.Ethanol, Component.Ethanol), (FoodFigure.Fat, Component.Fat),
    ];
}

/// <summary>Where a food goes in, as far as its starch is concerned.</summary>
public enum FoodPlace
{
    /// <summary>Into the mash, where enzymes are.</summary>
    Mash,

    /// <summary>Into hot wort, where heat opens starch and nothing converts it.</summary>
    Kettle,

    /// <summary>Into cold wort or beer.</summary>
    Cellar,
}

/// <summary>The figures that describe a food, kilograms per kilogram as is unless said, in the order of its block of parameters.</summary>
public enum FoodFigure
{
    /// <summary>Water.</summary>
    Water,

    /// <summary>Sucrose.</summary>
    Sucrose,

    /// <summary>Glucose.</summary>
    Glucose,

    /// <summary>Fructose.</summary>
    Fructose,

    /// <summary>Maltose.</summary>
    Maltose,

    /// <summary>Lactose.</summary>
    Lactose,

    /// <summary>Sugar alcohols.</summary>
    Polyols,

    /// <summary>Soluble carbohydrate no yeast takes.</summary>
    Dextrin,

    /// <summary>Protein that dissolves.</summary>
    SolubleProtein,

    /// <summary>Minerals that dissolve.</summary>
    Minerals,

    /// <summary>Ethanol.</summary>
    Ethanol,

    /// <summary>Lactic acid, with what of it is salt; so are the acids that follow.</summary>
    Lactic,

    /// <summary>Acetic acid.</summary>
    Acetic,

    /// <summary>Citric acid.</summary>
    Citric,

    /// <summary>Malic acid.</summary>
    Malic,

    /// <summary>Tartaric acid.</summary>
    Tartaric,

    /// <summary>Quinic acid and its like.</summary>
    Quinic,

    /// <summary>Fat.</summary>
    Fat,

    /// <summary>Starch.</summary>
    Starch,

    /// <summary>What never dissolves; the last that counts as mass.</summary>
    Insoluble,

    /// <summary>Share of the starch that settles with the insolubles when no mash converts it.</summary>
    StarchThatSettles,

    /// <summary>Kilograms of beer that a kilogram of what settles holds.</summary>
    SettledHold,

    /// <summary>Kilograms of wort that a kilogram of the insolubles holds in the bag.</summary>
    BagHold,

    /// <summary>Sodium, mg/kg; its mass is part of the minerals.</summary>
    Sodium,

    /// <summary>Potassium, mg/kg; its mass is part of the minerals.</summary>
    Potassium,

    /// <summary>Calcium that dissolves, mg/kg; its mass is part of the minerals.</summary>
    Calcium,

    /// <summary>Magnesium that dissolves, mg/kg.</summary>
    Magnesium,

    /// <summary>Phosphorus that dissolves, mg/kg of the element.</summary>
    Phosphorus,

    /// <summary>Chloride, mg/kg.</summary>
    Chloride,

    /// <summary>pH of the food itself; of no account where it has no acid.</summary>
    OwnPh,

    /// <summary>All its acids, as a share of what is likely.</summary>
    AcidScale,
}
