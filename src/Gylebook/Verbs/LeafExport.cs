using Gylebook.Forecast.Json;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Site.Leaves;
using Gylebook.Site.Publications;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Publishing;

namespace Gylebook.Verbs;

/// <summary>gylebook export RECIPE --as text|jsonld: a recipe of the book, or of a file, in words, or as search engines read it.</summary>
internal static class LeafExport
{
    /// <summary>What follows <c>--as</c>, and how each is written.</summary>
    public static IReadOnlyDictionary<string, Func<Leaf, string>> Forms { get; } = new Dictionary<string, Func<Leaf, string>>(StringComparer.Ordinal)
    {
        ["text"] = LeafText.Whole,
        ["jsonld"] = leaf => LeafJsonLd.Write(leaf, null) + "\n",
    };

    /// <summary>Writes it, and says on the side what is wrong or doubtful in what it was made of.</summary>
    public static Task<int> RunAsync(ExportVerb.Settings settings, CancellationToken cancellation) => NamedRecipe.GiveAsync(
        settings,
        (files, recipe, kit) => Give(settings, new Publication
        {
            Name = recipe.Name, Slug = FreeId.From(recipe.Name, SheetExport.Kind), Day = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
            Files = PublicFiles.Of(new GyleInputs(recipe, kit, files.Larder, null), null),
        }),
        async (book, found, kits) =>
        {
            PublishDesk desk = new(book, new GyleDesk(book, TimeProvider.System), TimeProvider.System);
            (Publication? publication, IReadOnlyList<Finding> findings) = await desk.WouldBeAsync(found.Id, kits?.Kit, cancellation);
            return publication is null ? FindingLines.Tell(findings, settings.Json) : Give(settings, publication);
        },
        cancellation);

    private static int Give(ExportVerb.Settings settings, Publication publication)
    {
        (Leaf? leaf, IReadOnlyList<Finding> findings) = Leaf.Of(publication);
        if (leaf is null)
        {
            return FindingLines.Tell(findings, settings.Json);
        }

        return ExportVerb.Give(settings, WrittenFile.ForOthers, Forms[settings.As!](leaf), $"recipe \"{publication.Name}\"", pen =>
        {
            pen.Text("kind", SheetExport.Kind);
            pen.Text("name", publication.Name);
            pen.List("findings", findings, finding => ForecastJson.WriteFinding(pen, finding));
        });
    }
}
