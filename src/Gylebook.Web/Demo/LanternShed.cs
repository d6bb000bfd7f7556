using System.Reflection;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Features.Kits;

namespace Gylebook.Web.Demo;

/// <summary>The demo: a made-up shed brewery. Its recipes, kit, waters, food sheet and larder are invented; every figure shown is the engine's own.</summary>
public static class LanternShed
{
    /// <summary>What it is called.</summary>
    public const string Name = "Lantern Shed";

    private const string Recipes = "demo/recipes/";
    private const string Foods = "demo/foods/";
    private const string Larder = "demo/larder/";
    private const string Waters = "demo/waters/";
    private const string TheKit = "demo/kit.json";

    private static readonly Assembly Here = typeof(LanternShed).Assembly;

    /// <summary>Puts the demo into a new book. Does nothing in a book that has recipes, or had the demo before.</summary>
    /// <returns>Whether it went in.</returns>
    public static async Task<bool> MoveInAsync(Book book, CancellationToken cancellation = default)
    {
        bool isNew = await book.Demo.StateAsync(cancellation) == DemoState.NotYet
            && (await book.Recipes.ListAsync(cancellation: cancellation)).Count == 0;

        // Marked first: a start that is cut short here leaves a smaller demo, never a double one.
        if (!isNew || !await book.Demo.MarkHereAsync(cancellation))
        {
            return false;
        }

        Guid kit = await book.Kits.CreateAsync(Text(TheKit), isDemo: true, cancellation);
        await KitInUse.ChooseAsync(book, kit, cancellation);
        foreach (string food in Names(Foods))
        {
            await book.Foods.CreateAsync(Text(food), isDemo: true, cancellation);
        }

        foreach (string sheet in Names(Larder))
        {
            await book.Larder.CreateAsync(Text(sheet), isDemo: true, cancellation);
        }

        Dictionary<string, Guid> recipes = [];
        foreach (string recipe in Names(Recipes).OrderDescending(StringComparer.Ordinal))
        {
            recipes[Path.GetFileName(recipe)] = await book.Recipes.CreateAsync(Text(recipe), isDemo: true, cancellation);
        }

        foreach (WaterDraft water in Names(Waters).Select(name => WaterDraft.Of(Text(name))))
        {
            _ = recipes.TryGetValue(Path.GetFileName(water["recipe"] ?? ""), out Guid recipe)
                ? await book.Waters.CreateForAsync(recipe, water.WithoutBrew().Text, isDemo: true, cancellation)
                : await book.Waters.CreateAsync(water.Text, isDemo: true, cancellation);
        }

        return true;
    }

    /// <summary>Puts its gyles in, once the demo is in: one planned, one on brew day half done. It takes a second or two, so that the pages are opened before.</summary>
    public static Task BrewAsync(Book book, TimeProvider clock, CancellationToken cancellation = default) => DemoGyles.BrewAsync(book, clock, cancellation);

    private static IEnumerable<string> Names(string folder) =>
        Here.GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private static string Text(string name)
    {
        using StreamReader reader = new(Here.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
