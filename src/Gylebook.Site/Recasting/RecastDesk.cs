using Gylebook.Forecast.Json;
using Gylebook.Gyles.Plans;
using Gylebook.Pictures.Sheets;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Recasting;

/// <summary>What the reader's browser asks: a publication opened once, and weighed anew for each address.</summary>
public sealed class RecastDesk
{
    private readonly GyleFiles _files;
    private readonly RecipeSheet? _here;

    private RecastDesk(GyleFiles files, GyleInputs inputs) =>
        (_files, _here) = (files, RecipeSheet.Of(inputs.Recipe, inputs.Kit, inputs.Larder, inputs.Water));

    /// <summary>Opens the document of a publication; null where it cannot be read.</summary>
    public static RecastDesk? Open(string publication) =>
        PublicationFile.Read(publication) is { } read && GyleInputs.Of(read.Files) is { } inputs ? new RecastDesk(read.Files, inputs) : null;

    /// <summary>The answer for what was typed, as JSON: <c>html</c> for the page, <c>brews</c>, and both files, <c>recipe</c> and <c>kit</c>.</summary>
    /// <param name="query">What stands behind the question mark of the address.</param>
    public string Answer(string query)
    {
        Recast recast = Recast.Of(_files, ReaderWords.Read(query))!;
        return JsonPen.Write(pen =>
        {
            pen.Text("html", RecastHtml.Write(recast, _here));
            pen.Flag("brews", recast.CanBeBrewed);
            pen.Text("recipe", recast.RecipeText);
            pen.Text("kit", recast.KitText);
        });
    }
}
