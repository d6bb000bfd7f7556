using Gylebook.Forecast.Json;
using Gylebook.Recipes.Interchange.OpenFormats;

namespace Gylebook.Terminal;

/// <summary>Tells what did not travel as it stood between a format of ours and another.</summary>
internal static class TravelLines
{
    /// <summary>Writes each on a line: what became of it, where, and what it was.</summary>
    public static void Tell(IReadOnlyList<Travel> travels, TextWriter to)
    {
        foreach (Travel travel in travels)
        {
            to.WriteLine($"  {travel.Did}{(travel.Where.Length > 0 ? " " : "")}{travel.Where}: {CommandLine.OneLine(travel.Words)}");
        }
    }

    /// <summary>The same as JSON.</summary>
    public static void Write(JsonPen pen, IReadOnlyList<Travel> travels) => pen.List("travels", travels, travel =>
    {
        pen.Text("did", travel.Did);
        pen.Text("where", travel.Where);
        pen.Text("words", travel.Words);
    });
}
