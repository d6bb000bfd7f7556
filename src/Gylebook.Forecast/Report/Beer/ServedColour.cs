using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report.Beer;

/// <summary>What the beer looks like in a glass.</summary>
/// <param name="Hex">Screen colour, <c>#RRGGBB</c>.</param>
/// <param name="PathLengthCm">How much beer the light goes through, cm.</param>
/// <param name="InGamut">Whether a screen can show it; if not, the nearest is given, channel by channel.</param>
/// <param name="IsLowerBound">Whether a food of unknown colour is in it, so that the beer is at least this dark.</param>
public sealed record Appearance(string Hex, double PathLengthCm, bool InGamut, bool IsLowerBound)
{
    /// <summary>The light it is held against.</summary>
    public const string Illuminant = "D65";

    /// <summary>Whose eyes: the observer of the colour-matching functions.</summary>
    public const string Observer = "CIE 1931 2°";
}

/// <summary>Colour by one law.</summary>
/// <param name="Law">Stable name: <c>powerLaw</c>, <c>straightLines</c>.</param>
/// <param name="Srm">Colour as served.</param>
/// <param name="WithinRange">Whether the law was made for colours like this.</param>
public sealed record ColourByLaw(string Law, double Srm, bool WithinRange);

/// <summary>Colour and appearance of the beer as served.</summary>
internal static class ServedColour
{
    /// <summary>The glass of beer.</summary>
    public static Appearance AppearanceOf(BrewPlan brew, RunOutcome figures, Length glass)
    {
        double centimetres = glass.Metres * 100;
        SeenColour seen = WortAppearance.In(figures[BeerReadouts.Colour], centimetres);
        return new Appearance(seen.Hex, centimetres, seen.InGamut, IsLowerBound(brew));
    }

    /// <summary>The colour by both laws; by one where no malt promises any.</summary>
    public static IReadOnlyList<ColourByLaw> ByLaw(RunOutcome figures)
    {
        double served = figures[BeerReadouts.Colour], lines = figures[BeerReadouts.StraightLineSrm];
        return
        [
            new("powerLaw", served, WortColour.IsWithinPublishedRange(served)),
            .. double.IsNaN(lines) ? Array.Empty<ColourByLaw>() : [new("straightLines", lines, StraightLineColour.IsWithinPublishedRange(lines))],
        ];
    }

    /// <summary>Whether something of unknown colour went in and was counted as colourless.</summary>
    public static bool IsLowerBound(BrewPlan planned) => planned.Lines.Any(l =>
        (l.Food is not null && l.Line.Kind == IngredientKind.Food)
        || (l.Sugar is not null && (l.Sugar.Colour is null || l.Line.At.Point >= AdditionPoint.KnockOut)));
}
