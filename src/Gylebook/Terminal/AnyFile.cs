using Gylebook.Recipes.Forms;
using System.Text.Json;
using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Terminal;

/// <summary>Checks a file of any of our forms: which one it is, its <c>format</c> key says.</summary>
internal static class AnyFile
{
    /// <summary>All findings of a file; a recipe is forecast on a kit too.</summary>
    public static IReadOnlyList<Finding> Check(string path, string? kit)
    {
        List<Finding> findings = [];
        if (!OpenedFiles.TryOpen(path, findings, out FileStream? stream))
        {
            return findings;
        }

        using (stream)
        {
            switch (FormatOf(stream!))
            {
                case KitFile.Format:
                    Reading<Kit> read = KitFile.Read(stream!);
                    return [.. read.Findings, .. read.Value is null ? [] : KitCheck.Findings(read.Value)];
                case FoodFile.Format:
                    Reading<FoodSheet> sheet = FoodFile.Read(stream!);
                    return [.. sheet.Findings, .. sheet.Value is null ? [] : FoodMakeups.From(sheet.Value).Findings];
                case WaterFile.Format:
                    return OpenedWater.From(path, kit).Findings;
                case ReadingsFile.Format:
                    return ReadingsFile.Read(stream!).Findings;
                case { } format when LarderFile.Forms.Any(form => form.Format == format):
                    return LarderFile.Read(stream!).Findings;
                default:
                    return CheckRecipe(path, kit);
            }
        }
    }

    private static IReadOnlyList<Finding> CheckRecipe(string path, string? kit)
    {
        OpenedFiles files = OpenedFiles.Open(path, kit);
        return files.Recipe is null || files.Kit is null
            ? files.Findings
            : [.. files.Findings, .. Forecaster.Forecast(files.Recipe, files.Kit, files.Larder, "check").Findings];
    }

    /// <summary>What the <c>format</c> key near the start says; null when it cannot be seen there. The stream is rewound.</summary>
    private static string? FormatOf(FileStream stream)
    {
        byte[] start = new byte[4096];
        int length = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        try
        {
            Utf8JsonReader reader = new(start.AsSpan(0, length), isFinalBlock: false, default);
            while (reader.Read())
            {
                if (reader.CurrentDepth == 1 && reader.TokenType == JsonTokenType.PropertyName && reader.ValueTextEquals("format"u8) && reader.Read())
                {
                    return reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
                }
            }
        }
        catch (JsonException)
        {
            // Broken JSON is for the reader to describe, with line and column.
        }

        return null;
    }
}
