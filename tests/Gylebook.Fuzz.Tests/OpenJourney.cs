using System.Text;
using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.Arrivals;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Interchange.Csv;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;

namespace Gylebook.Fuzz.Tests;

/// <summary>A document's whole way: read, landed as files of ours, each read again, its recipes written in all formats and read once more.</summary>
internal static class OpenJourney
{
    private static readonly ArrivalWishes Wishes = new() { CastOf = (recipe, sheets) => StatedFigures.CastOf(recipe, BuiltInKit.LanternShed, sheets) };

    /// <summary>Goes it.</summary>
    /// <returns>Whether anything came of it.</returns>
    public static bool Of(OpenCase one)
    {
        if (OpenFile.Read(one.Document, Wishes) is not { } arrival)
        {
            return false;
        }

        Must(arrival.IsRead == !arrival.Findings.Any(finding => finding.Severity == Severity.Error), "read or not, and the findings say otherwise");
        Must(arrival.IsRead || arrival.Files.Count == 0, "not read, and files of it");
        foreach (ArrivedFile file in arrival.Files)
        {
            FileInHand hand = FileInHand.Read(Encoding.UTF8.GetBytes(file.Text));
            Must(hand.IsReadable, $"{file.Form.Noun} cannot be read: {string.Join("; ", hand.Findings.Select(finding => $"{finding.Where}: {finding.Message}"))}");
        }

        foreach (ArrivedFile file in arrival.Files.Where(file => file.Form == RecipeFile.Form))
        {
            Again(RecipeFile.Read(file.Text).Value!);
        }

        return arrival.Files.Count > 0;
    }

    private static void Again(Recipe recipe)
    {
        Must(RecipeCsv.Write(recipe, Larder.Empty).Text.StartsWith(RecipeCsv.Head, StringComparison.Ordinal), "no table");
        foreach (string text in new[] { BeerJsonFile.Write(recipe, Larder.Empty).Text, BeerXmlFile.Write(recipe, Larder.Empty).Text })
        {
            Arrival back = OpenFile.Read(Encoding.UTF8.GetBytes(text))!;
            Must(back.Files.Count(file => file.Form == RecipeFile.Form) == 1, $"written, and no recipe when it is read again: {string.Join("; ", back.Findings.Select(finding => finding.Message))}\n{text}");
        }
    }

    private static void Must(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new InvalidDataException(otherwise);
        }
    }
}
