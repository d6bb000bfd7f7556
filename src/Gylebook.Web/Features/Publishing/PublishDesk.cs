using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Site.Folder;
using Gylebook.Site.Publications;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Glass;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;

namespace Gylebook.Web.Features.Publishing;

/// <summary>Recipes given out, as pages and terminal work with them.</summary>
/// <param name="book">The book.</param>
/// <param name="gyles">Its gyles.</param>
/// <param name="clock">The time.</param>
public sealed class PublishDesk(Book book, GyleDesk gyles, TimeProvider clock)
{
    private const string ByKey = "publish.by";
    private const string DefaultTitle = "Recipes";

    /// <summary>Who gives recipes out, as the brewer wants to be called; empty for nobody.</summary>
    public async Task<string> ByAsync(CancellationToken cancellation = default) => await book.Settings.FindAsync(ByKey, cancellation) ?? "";

    /// <summary>Remembers that name.</summary>
    public Task SetByAsync(string by, CancellationToken cancellation = default) => book.Settings.SetAsync(ByKey, (by ?? "").Trim(), cancellation);

    /// <summary>What is given out, with what was put right in it; what is damaged, or of a form to come, is left out.</summary>
    public async Task<IReadOnlyList<Publication>> ListAsync(CancellationToken cancellation = default) =>
        [.. (await book.Publications.ListAsync(cancellation)).Select(Read).OfType<Publication>()];

    /// <summary>Gives out a recipe as its draft stands.</summary>
    /// <returns>None, and why, where it cannot be brewed as it is.</returns>
    public async Task<(KeptPublication? Kept, IReadOnlyList<Finding> Findings)> PublishRecipeAsync(Guid recipeId, CancellationToken cancellation = default)
    {
        (GyleInputs? inputs, string? water, IReadOnlyList<Finding> findings) = await InputsAsync(recipeId, cancellation);
        return inputs is null ? (null, findings) : await PublishAsync(recipeId, null, null, inputs, water, [], null, cancellation);
    }

    /// <summary>A recipe as it would be given out today, without being given out.</summary>
    /// <param name="recipeId">Which recipe.</param>
    /// <param name="kit">The kit; null for the one in use.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>None, and why, where it cannot be read.</returns>
    public async Task<(Publication? Publication, IReadOnlyList<Finding> Findings)> WouldBeAsync(Guid recipeId, Kit? kit, CancellationToken cancellation = default)
    {
        (GyleInputs? inputs, string? water, IReadOnlyList<Finding> findings) = await InputsAsync(recipeId, cancellation);
        return (inputs is null ? null : new Publication
        {
            Name = inputs.Recipe.Name, Slug = FreeId.From(inputs.Recipe.Name, "recipe"), Day = DayOf(clock.GetUtcNow()), By = await ByAsync(cancellation),
            Files = PublicFiles.Of(inputs with { Kit = kit ?? inputs.Kit }, water),
        }, findings);
    }

    private async Task<(GyleInputs? Inputs, string? Water, IReadOnlyList<Finding> Findings)> InputsAsync(Guid recipeId, CancellationToken cancellation)
    {
        if (await book.Files.FindAsync("recipe", recipeId, cancellation) is not { } file)
        {
            return (null, null, [new("publish.unknown", Severity.Error, "recipe", "there is no such recipe in the book")]);
        }

        if (RecipeFile.Read(file.Text) is var read && read.Value is not { } recipe)
        {
            return (null, null, read.Findings);
        }

        Sheet? water = await book.Waters.OfRecipeAsync(recipeId, cancellation);
        string? waterText = water is { IsDamaged: false } ? water.Document : null;
        return (
            new GyleInputs(recipe, (await KitInUse.FindAsync(book, cancellation)).Kit, await OwnLarder.OfAsync(book, cancellation), waterText is null ? null : WaterFile.Read(waterText).Value),
            waterText, []);
    }

    /// <summary>Gives out what a gyle was brewed from, with what was measured of it.</summary>
    /// <returns>None, and why, where its files cannot be read any more.</returns>
    public async Task<(KeptPublication? Kept, IReadOnlyList<Finding> Findings)> PublishGyleAsync(Guid gyleId, CancellationToken cancellation = default)
    {
        if (await gyles.OpenAsync(gyleId, cancellation) is not { } gyle || GyleInputs.Of(gyle.Plan) is not { } inputs)
        {
            return (null, [new("publish.unknown", Severity.Error, "gyle", "there is no such gyle that has started, or its plan cannot be read")]);
        }

        OpenGlass glass = await GlassDesk.OpenAsync(gyle, cancellation);
        MeasuredNumber[] measured =
        [
            .. glass.Held.Select(held => new MeasuredNumber(held.Title, held.Readout.Unit, held.Readout.Decimals, held.Ends?.Low, held.Ends?.High, held.Measured)),
        ];
        return await PublishAsync(gyle.Line.RecipeId, gyle.Line.VersionNumber, gyleId, inputs, gyle.Plan.Water, measured, DayOf(gyle.Pitched ?? gyle.Start), cancellation);
    }

    private async Task<(KeptPublication? Kept, IReadOnlyList<Finding> Findings)> PublishAsync(
        Guid recipeId, int? version, Guid? gyleId, GyleInputs inputs, string? water, IReadOnlyList<MeasuredNumber> measured, DateOnly? brewed, CancellationToken cancellation)
    {
        (BrewPlan brew, _) = Forecaster.Plan(inputs.Recipe, inputs.Kit, inputs.Larder, inputs.Water);
        BrewForecast forecast = Forecaster.Forecast(brew, inputs.Recipe.Name);
        if (!forecast.CanBeBrewed)
        {
            return (null, forecast.Findings);
        }

        string by = await ByAsync(cancellation);
        DateOnly today = DayOf(clock.GetUtcNow());
        return (await book.Publications.PublishAsync(
            recipeId, version, gyleId,
            to => PublicationFile.Write(new Publication
            {
                Name = inputs.Recipe.Name, Slug = to.Slug, Version = to.Version.Number, Day = today, By = by,
                Files = PublicFiles.Of(inputs with { Recipe = RecipeFile.Read(to.Version.Document).Value ?? inputs.Recipe }, water), Brewed = brewed, Measured = measured,
            }),
            cancellation), forecast.Findings);
    }

    /// <summary>The folder of all that is given out; without the engine.</summary>
    /// <param name="address">Where it will be found, ending in a slash; null where nobody knows yet.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<(IReadOnlyList<SiteFile> Files, IReadOnlyList<Finding> Findings)> FolderAsync(Uri? address, CancellationToken cancellation = default)
    {
        string by = await ByAsync(cancellation);
        IReadOnlyList<Publication> all = await ListAsync(cancellation);
        return await Task.Run(() => new SiteFolder(by.Length > 0 ? by : DefaultTitle, address).Pages(all), cancellation);
    }

    private static Publication? Read(KeptPublication kept) => kept.IsDamaged || PublicationFile.Read(kept.Document) is not { } read ? null
        : read with { Slug = kept.Slug, Errata = [.. kept.Errata.Select(erratum => new Erratum(erratum.Day, erratum.Version, erratum.Text))] };

    private DateOnly DayOf(DateTimeOffset at) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(at, clock.LocalTimeZone).DateTime);
}
