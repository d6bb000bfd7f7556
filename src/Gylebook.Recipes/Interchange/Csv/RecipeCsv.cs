using System.Globalization;
using System.Text;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.Csv;

/// <summary>A recipe as a table for a spreadsheet: a row an ingredient, a rest or a wish. It goes out and does not come back.</summary>
/// <remarks>Commas, quotes doubled, lines ending in CRLF: RFC 4180. A text that a spreadsheet would take for a formula has an apostrophe before it.</remarks>
public static class RecipeCsv
{
    /// <summary>The first line.</summary>
    public const string Head = "part,kind,what,name,amount,unit,when,form,alpha %,colour EBC,portion,as typed";

    private const string LineEnd = "\r\n";

    /// <summary>The table, and what has no column in it.</summary>
    public static (string Text, IReadOnlyList<Travel> Travels) Write(Recipe recipe, Larder larder)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(larder);
        StringBuilder text = new(Head + LineEnd);
        Row(text, "package", "", recipe.Name, recipe.Package.In, Number(recipe.Package.Volume.Value.Litres), "L", "", "", "", "", "", recipe.Package.Volume.Text);
        foreach (IngredientLine line in recipe.Ingredients)
        {
            Line(text, line, larder.Sheet(line.Kind, line.Of)?.Name);
        }

        Rests(text, "mash", recipe.Mash?.Rests ?? []);
        Poured(text, "strike", recipe.Liquor?.Strike, null, "");
        Poured(text, "rinse", recipe.Mash?.Sparge.Volume, recipe.Mash?.Sparge.Temperature, recipe.Mash is { } mash ? FileWords.SpargeMethods.Word(mash.Sparge.Method) : "");
        Poured(text, "top-up", recipe.Liquor?.TopUp, null, "");
        if (recipe.Souring is { } souring)
        {
            Row(text, "souring", "", souring.Culture, "", Number(souring.Time.Value.Minutes), "min", Invariant($"{souring.Temperature.Value.Celsius:0.##} °C"), "", "", "", "", Invariant($"to pH {souring.Ph}"));
        }

        Rests(text, "stand", recipe.Stand is { } stand ? [stand] : []);
        Rests(text, "ferment", recipe.Ferment);
        if (recipe.Boil is { } boil)
        {
            Row(text, "boil", "", "", "", Number(boil.Time.Value.Minutes), "min", "", "", "", "", "", boil.Time.Text);
        }

        foreach (PortionShare portion in recipe.Portions)
        {
            Row(text, "portion", "", portion.Name, "", Number(portion.Share.Value.Percent), "%", "", "", "", "", "", portion.Share.Text);
        }

        if (recipe.Notes is { } notes)
        {
            Row(text, "notes", "", "", "", "", "", "", "", "", "", "", notes);
        }

        return (text.ToString(), Left(recipe));
    }

    private static IReadOnlyList<Travel> Left(Recipe recipe)
    {
        TravelList travels = new();
        Leave("hold.originalGravity", recipe.Hold?.OriginalGravity?.Text);
        Leave("hold.bitterness", recipe.Hold?.Bitterness?.Text);
        Leave("package.carbonation", recipe.Package.Carbonation?.Text);
        for (int i = 0; i < recipe.Ingredients.Count; i++)
        {
            IngredientLine line = recipe.Ingredients[i];
            string path = Invariant($"ingredients[{i}]");
            Leave($"{path}.lot", line.Lot);
            Leave($"{path}.share", line.Share?.Text);
            Leave($"{path}.age", line.Age?.Text);
            Leave($"{path}.storage", line.Storage?.Temperature.Text);
            Leave($"{path}.cells", line.Cells?.Text);
            Leave($"{path}.attenuation", line.Attenuation?.Text);
        }

        return travels.All;

        void Leave(string where, string? value)
        {
            if (value is not null)
            {
                travels.Leave(where, $"{value}; the table has no column for it");
            }
        }
    }

    private static void Line(StringBuilder text, IngredientLine line, string? sheet)
    {
        bool isPoured = line.Amount.Mass is null;
        Row(
            text, "ingredient", FileWords.Kinds.Word(line.Kind), line.Of, line.As ?? sheet ?? line.Of,
            Number(isPoured ? line.Amount.Volume?.Value.Litres : line.Amount.Mass?.Value.Kilograms), isPoured ? "L" : "kg",
            AdditionTimeText.Write(line.At), line.Form is { } form ? FileWords.AllForms.Word(form) : "",
            Number(line.Alpha?.Value.Percent), Number(line.Colour?.Value.Ebc), line.Portion ?? "", line.Amount.Text);
    }

    private static void Rests(StringBuilder text, string part, IReadOnlyList<Rest> rests)
    {
        foreach (Rest rest in rests)
        {
            Row(text, part, "", "", "", Number(rest.Time.Value.Minutes), "min", Invariant($"{rest.Temperature.Value.Celsius:0.##} °C"), "", "", "", "", $"{rest.Time} at {rest.Temperature}");
        }
    }

    private static void Poured(StringBuilder text, string part, Entered<VolumeAt20C>? litres, Entered<Temperature>? warm, string how)
    {
        if (litres is { } volume)
        {
            Row(text, part, "", how, "", Number(volume.Value.Litres), "L", warm is { } at ? Invariant($"{at.Value.Celsius:0.##} °C") : "", "", "", "", "", volume.Text);
        }
    }

    private static void Row(StringBuilder text, params IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Cell)).Append(LineEnd);

    private static string Cell(string cell)
    {
        string safe = cell.Length > 0 && cell[0] is '=' or '+' or '-' or '@' or '\t' or '\r' && !double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? $"'{cell}" : cell;
        return safe.AsSpan().IndexOfAny(",\"\r\n") < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static string Number(double? number) => number?.ToString("0.#########", CultureInfo.InvariantCulture) ?? "";
}
