using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>Findings as a page says them: it stands at the field already, so the path of a file need not be read.</summary>
internal static class FindingWords
{
    /// <summary>The same finding without the path in front, or with the vessel's name for it.</summary>
    public static Finding Plain(Finding finding)
    {
        string path = finding.Where + ": ";
        if (finding.Where.Length == 0 || !finding.Message.StartsWith(path, StringComparison.Ordinal))
        {
            return finding;
        }

        string rest = finding.Message[path.Length..];
        string? what = finding.Where.StartsWith("kit.", StringComparison.Ordinal) ? finding.Where["kit.".Length..].Replace('.', ' ')
            : StagePlaces.LineOf(finding) is not null || finding.Where == "ingredients" ? null
            : FieldWords.Of(RecipeFile.Form, finding.Where);
        return finding with { Message = what is null ? rest : $"{what}: {rest}" };
    }
}
