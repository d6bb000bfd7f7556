using System.Text.RegularExpressions;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits of single fields. Each returns null when it would change nothing.</summary>
public static partial class FieldEdits
{
    /// <summary>Fields that a recipe can do without: emptied, they go.</summary>
    private static readonly string[] Optional =
        ["notes", "carbonation", "as", "alpha", "form", "age", "lost", "cells", "attenuation", "colour", "portion", "strike", "topUp", "sparge", "souring", "boil", "stand", "mash", "liquor"];

    /// <summary>Types into a field.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="path">Which field, as in findings: <c>boil.time</c>, <c>ingredients[2].alpha</c>.</param>
    /// <param name="typed">The text, kept as typed; blank to have the field say nothing. A bare number keeps the unit it replaces.</param>
    public static RecipeEdit? Put(this RecipeDraft draft, string path, string? typed)
    {
        string? before = draft[path];
        bool clears = string.IsNullOrWhiteSpace(typed);
        string? after = clears ? (IsOptional(path) ? null : "") : WithUnitOf(before, typed!.Trim());
        if (after == before || (clears && path == "name"))
        {
            // A recipe always has a name: it is what the book finds it by.
            return null;
        }

        RecipeDraft changed = draft.Changed(file =>
        {
            if (after is null)
            {
                FieldPath.Remove(file, path);
            }
            else
            {
                FieldPath.Set(file, path, after);
            }
        });
        string nothing = FieldWords.Nothing(path);
        return new RecipeEdit(changed, $"{WordFor(draft, path)}: {Said(before, nothing)} → {Said(after, nothing)}");
    }

    /// <summary>Takes a whole part out of the recipe: <c>boil</c>, <c>stand</c>, <c>mash.sparge</c>.</summary>
    public static RecipeEdit? Drop(this RecipeDraft draft, string path) => draft.Has(path)
        ? new RecipeEdit(draft.Changed(file => FieldPath.Remove(file, path)), $"{FieldWords.Of(path)}: taken out")
        : null;

    /// <summary>Chooses how the grain is rinsed; none takes the whole rinse out, another one brings usual figures along.</summary>
    public static RecipeEdit? Sparge(this RecipeDraft draft, SpargeMethod method)
    {
        string word = FileWords.SpargeMethods.Word(method);
        string before = draft["mash.sparge.method"] ?? "none";
        if (before == word)
        {
            return null;
        }

        RecipeDraft changed = draft.Changed(file =>
        {
            if (method == SpargeMethod.None)
            {
                FieldPath.Remove(file, "mash.sparge");
                return;
            }

            FieldPath.Set(file, "mash.sparge.method", word);
            foreach ((string key, string usual) in new[] { ("volume", "5 L"), ("temperature", "77 °C") })
            {
                if (draft[$"mash.sparge.{key}"] is null)
                {
                    FieldPath.Set(file, $"mash.sparge.{key}", usual);
                }
            }
        });
        return new RecipeEdit(changed, $"sparge: {before} → {word}");
    }

    /// <summary>Changes several amounts at once: what a solver found.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="amounts">Texts by number of the line.</param>
    /// <param name="why">What for: <c>grist for 1.050</c>.</param>
    public static RecipeEdit? Amounts(this RecipeDraft draft, IReadOnlyDictionary<int, string> amounts, string why)
    {
        RecipeDraft changed = draft.Changed(file =>
        {
            foreach ((int line, string amount) in amounts)
            {
                FieldPath.Set(file, Invariant($"ingredients[{line}].amount"), amount);
            }
        });
        return changed.Text == draft.Text ? null : new RecipeEdit(changed, why);
    }

    private static bool IsOptional(string path) =>
        Optional.Contains(path[(path.LastIndexOf('.') + 1)..]) || path is "mash.sparge.volume" or "mash.sparge.temperature";

    /// <summary>"4" typed over "3.6 kg" means 4 kg.</summary>
    private static string WithUnitOf(string? before, string typed) =>
        BareNumber().IsMatch(typed) && before is not null && NumberAndUnit().Match(before) is { Success: true } match
            ? $"{typed}{match.Groups["unit"].Value}"
            : typed;

    private static string WordFor(RecipeDraft draft, string path) =>
        LinePath().Match(path) is { Success: true } match
            ? FieldWords.OfField(draft.Lines[int.Parse(match.Groups["line"].ValueSpan, System.Globalization.CultureInfo.InvariantCulture)], match.Groups["key"].Value)
            : FieldWords.Of(path);

    private static string Said(string? text, string nothing) =>
        string.IsNullOrEmpty(text) ? nothing : FindingList.Shorten(text);

    [GeneratedRegex(@"^\d+([.,]\d+)?$")]
    private static partial Regex BareNumber();

    [GeneratedRegex(@"^\s*\d+([.,]\d+)?(?<unit>\s*[^\d\s.,].*)$")]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"^ingredients\[(?<line>\d+)\]\.(?<key>[\w.]+)$")]
    private static partial Regex LinePath();
}
