using System.Globalization;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>Where a finding stands, as people say it: the keys of a file are for those who write one.</summary>
public static class PlaceWords
{
    private static readonly (string Key, string Said, FileForm? Form)[] Files =
    [
        ("recipe.", "", RecipeFile.Form), ("water.", "", WaterFile.Form), ("readings.", "", ReadingsFile.Form), ("kit.", "the kit, ", KitFile.Form),
        ("foods/", "", FoodFile.Form), ("larder/", "", null),
    ];

    private static readonly FileForm[] Forms = [RecipeFile.Form, WaterFile.Form, KitFile.Form, FoodFile.Form];

    /// <summary>The place in words: <c>the kit, fermenter, brim</c> for <c>kit.fermenter.brim</c>; a file's name stays as it is.</summary>
    public static string Of(string where)
    {
        if (where.EndsWith(".json", StringComparison.Ordinal))
        {
            return where;
        }

        foreach ((string key, string said, FileForm? form) in Files.Where(file => where.StartsWith(file.Key, StringComparison.Ordinal)))
        {
            string rest = where[key.Length..];
            return key.EndsWith('/') ? OfSheet(rest, form) : said + (form?.At(rest) is null ? Of(rest) : Said(form, rest));
        }

        return where.Contains('/', StringComparison.Ordinal) ? where : Said(Forms.FirstOrDefault(form => form.At(where) is not null), where);
    }

    /// <summary>A sheet goes by its id, which is its name with dashes, and a field of it.</summary>
    private static string OfSheet(string where, FileForm? form)
    {
        int dot = where.IndexOf('.', StringComparison.Ordinal);
        string name = (dot < 0 ? where : where[..dot]).Replace('-', ' ');
        return dot < 0 ? name : $"{name}, {Said(form, where[(dot + 1)..])}";
    }

    private static string Said(FileForm? form, string path)
    {
        string line = path.StartsWith("ingredients[", StringComparison.Ordinal) && path.IndexOf(']', StringComparison.Ordinal) is var end && end > 0
            && int.TryParse(path.AsSpan("ingredients[".Length, end - "ingredients[".Length), CultureInfo.InvariantCulture, out int number)
                ? Invariant($"line {number + 1}")
                : "";
        string rest = line.Length == 0 ? path : path[(path.IndexOf(']', StringComparison.Ordinal) + 1)..].TrimStart('.');
        string said = form is not null && form.At(path) is not null && rest.Length > 0 ? FieldWords.Of(form, path) : Plain(rest);
        return line.Length == 0 ? said : said.Length == 0 ? line : $"{line}, {said}";
    }

    /// <summary>A path that no form knows, such as a place and its ion: its keys as words.</summary>
    private static string Plain(string path) => string.Join(
        ", ",
        path.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries)
            .Select(key => int.TryParse(key, CultureInfo.InvariantCulture, out int number) ? Invariant($"{number + 1}") : KeyWords.Of(key)));
}
