using Gylebook.Engine.State;
using Gylebook.Forecast;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>The two models of bitterness, as the page names them.</summary>
public static class BitternessWords
{
    /// <summary>Both, by their names in files, the usual one first.</summary>
    public static IReadOnlyList<(string Value, string Words)> Choices { get; } =
        [.. Enum.GetValues<BitternessModel>().Select(model => (Words.Of(model), Of(Words.Of(model))))];

    /// <summary>By its name in files.</summary>
    public static string Of(string model) =>
        model == Words.Of(BitternessModel.TimeGravity) ? "the table of time and gravity" : "isomerisation kinetics";
}
