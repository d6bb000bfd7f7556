using Gylebook.Recipes.Data;
using Gylebook.Science.Foods;
using Gylebook.Science.Foods.Labels;

namespace Gylebook.Recipes.Foods;

/// <summary>Tells what the science of panels found, as findings on the lines of the file.</summary>
internal static class LabelFindings
{
    /// <summary>Contradictions are errors; everything else is a warning that stops nothing.</summary>
    public static void Report(LabelPanel label, LabelBounds bounds, MakeupNotes notes)
    {
        foreach (var found in bounds.Contradictions)
        {
            notes.Find(
                "food.labelImpossible", Severity.Error, "label." + Key(found.Lines[0]),
                $"{Spoken(found.Lines)}: {found.Message} Look at the packet again.", Grams(found.Value), Grams(found.Limit));
        }

        foreach (var caution in bounds.Cautions)
        {
            notes.Find(
                caution.Code, Severity.Warning, "label." + Key(caution.Lines[0]), $"{Spoken(caution.Lines)}: {caution.Message}",
                Value(label, caution.Lines[0]));
        }

        notes.Find(
            "food.labelRead", Severity.Note, "label",
            bounds.IsPossible
                ? $"The printed figures stand for: protein {Span(bounds.Protein)}, fat {Span(bounds.Fat)}, carbohydrate with fibre {Span(bounds.Carbohydrate)}, sugars {Span(bounds.Sugars)} g in 100 g."
                : "Read as it stands: no food prints this.");
    }

    /// <summary>A line's key in a food file.</summary>
    public static string Key(LabelLine line) => line switch
    {
        LabelLine.EnergyKilocalories or LabelLine.EnergyKilojoules => "energy",
        LabelLine.SaturatedFat => "saturated",
        LabelLine.AddedSugars => "addedSugars",
        LabelLine.Polyols => "sugarAlcohols",
        _ => char.ToLowerInvariant(line.ToString()[0]) + line.ToString()[1..],
    };

    /// <summary>Lines as a packet prints them: <c>sugar alcohols</c>.</summary>
    private static string Spoken(IEnumerable<LabelLine> lines) => string.Join(
        ", ", lines.Select(line => KeyWords.Of(Key(line))));

    private static string Span(Interval grams) => grams.Low == grams.High ? Invariant($"{grams.Low:0.##}")
        : double.IsFinite(grams.High) ? Invariant($"{grams.Low:0.##} to {grams.High:0.##}") : Invariant($"{grams.Low:0.##} or more");

    private static string Grams(double grams) => Invariant($"{grams:0.##} g");

    private static string? Value(LabelPanel label, LabelLine line) => line switch
    {
        LabelLine.EnergyKilocalories or LabelLine.EnergyKilojoules => label.EnergyKilocalories is { } energy ? MakeupNotes.Say(energy) + " kcal" : null,
        LabelLine.Serving => label.Serving?.Text,
        LabelLine.Fat => label.Fat?.Text,
        LabelLine.SaturatedFat => label.Saturated?.Text,
        LabelLine.Sodium => label.Sodium?.Text,
        LabelLine.Salt => label.Salt?.Text,
        LabelLine.Potassium => label.Potassium?.Text,
        LabelLine.Carbohydrate => label.Carbohydrate?.Text,
        LabelLine.Fibre => label.Fibre?.Text,
        LabelLine.Sugars => label.Sugars?.Text,
        LabelLine.AddedSugars => label.AddedSugars?.Text,
        LabelLine.Polyols => label.SugarAlcohols?.Text,
        LabelLine.Starch => label.Starch?.Text,
        LabelLine.Protein => label.Protein?.Text,
        _ => null,
    };
}
