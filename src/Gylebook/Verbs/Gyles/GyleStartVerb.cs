using Gylebook.Forecast.Json;
using Gylebook.Gyles.Shopping;
using Gylebook.Recipes;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle start RECIPE [--planned GYLE] [--kit FILE] [--as NAME] [--fermenter NAME] [--keg NAME] [--book FILE] [--json]; makes the book where there is none.</summary>
internal sealed class GyleStartVerb : GyleOfRecipeVerb<GyleStartVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : GyleOfRecipeSettings;

    /// <inheritdoc/>
    protected override async Task<int> BeginAsync(GyleDesk desk, GyleOrder order, KeptFile recipe, Settings settings, CancellationToken cancellation)
    {
        // What has to be bought is told of the larder as it is before anything goes in.
        GyleToBe? seen = await desk.PrepareAsync(order, cancellation);
        ShoppingList shopping = seen?.Shopping(await desk.UsedOfLotsAsync(cancellation)) ?? new ShoppingList([]);
        (GyleLine? gyle, IReadOnlyList<Finding> findings) = await desk.StartAsync(order, seen, cancellation);
        if (gyle is null)
        {
            return Refuse(findings, settings.Json);
        }

        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen => Write(pen, gyle, recipe, seen!.Minutes, shopping, findings)));
            return 0;
        }

        string version = Invariant($"{gyle.VersionNumber}");
        Console.WriteLine(CommandLine.OneLine($"\"{gyle.Name}\" has started, from version {version} of {recipe.Name}; its plan is frozen. gylebook gyle steps \"{gyle.Name}\" tells what to do."));
        foreach (string line in GyleText.Vessels(gyle).Concat(GyleText.Shopping(shopping)).Concat(findings.Select(FindingLines.Spoken)))
        {
            Console.WriteLine(line);
        }

        return 0;
    }

    private static void Write(JsonPen pen, GyleLine gyle, KeptFile recipe, double minutes, ShoppingList shopping, IReadOnlyList<Finding> findings)
    {
        pen.Text("name", gyle.Name);
        pen.Text("number", gyle.Id.ToString());
        pen.Text("recipe", recipe.Name);
        pen.Number("version", gyle.VersionNumber, 0);
        pen.Text("status", GyleText.Word(gyle.Status));
        pen.Number("minutes", minutes, 0);
        GyleText.WriteVessels(pen, gyle);
        GyleText.WriteShopping(pen, shopping);
        pen.List("findings", findings, finding => ForecastJson.WriteFinding(pen, finding));
    }
}
