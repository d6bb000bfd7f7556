using Gylebook.Forecast.Report;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Packaging;
using Gylebook.Gyles.Plans;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Gyles.Cellar;

namespace Gylebook.Web.Features.Gyles.Packaging;

/// <summary>A gyle that is to be packaged: what it is brewed from, what is expected of it, how it ferments.</summary>
/// <param name="Gyle">The gyle.</param>
/// <param name="Inputs">What it was brewed from.</param>
/// <param name="Live">Its forecast with all that was read.</param>
/// <param name="Fermentation">How it ferments; null before the pitch.</param>
public sealed record OpenPackage(OpenGyle Gyle, GyleInputs Inputs, BrewForecast Live, Fermentation? Fermentation)
{
    /// <summary>What comes of a wish.</summary>
    public (PackageQuestion? Asked, PackagePlan? Plan, string? Wrong) Of(PackageWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        (PackageQuestion? asked, string? wrong) = wish.Of(Inputs, Live, Fermentation, Gyle.Log.Readings.Any(reading => reading.Stage == ForcedFerment.Stage));
        return (asked, asked is null ? null : PackageCheck.Of(asked), wrong);
    }

    /// <summary>The wish that the recipe has.</summary>
    public PackageWish Recipes => new() { Into = [(Inputs.Recipe.Package.In, null)] };
}

/// <summary>Packaging and pouring, as pages and terminal work with it.</summary>
/// <param name="desk">The gyles.</param>
/// <param name="cellar">Those in the fermenter.</param>
/// <param name="clock">The time.</param>
public sealed class PackageDesk(GyleDesk desk, CellarDesk cellar, TimeProvider clock)
{
    /// <summary>A gyle to be packaged; null where this program can no longer read its plan.</summary>
    public async Task<OpenPackage?> OpenAsync(OpenGyle gyle, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        Fermentation? fermentation = await cellar.OpenAsync(gyle, cancellation: cancellation);
        return await Task.Run(() => GyleInputs.Of(gyle.Plan) is { } inputs && gyle.Live(fermentation) is { } live ? new OpenPackage(gyle, inputs, live, fermentation) : null, cancellation);
    }

    /// <summary>Writes down that it was packaged so. A plan that is refused is not taken.</summary>
    /// <exception cref="InvalidOperationException">The plan is refused.</exception>
    public Task<int> PackagedAsync(OpenGyle gyle, PackagePlan plan, PackageQuestion asked, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.IsRefused)
        {
            throw new InvalidOperationException(plan.Refusals[0].Why);
        }

        return desk.DoAsync(gyle, [Filled(plan, asked, clock.GetUtcNow())], cancellation);
    }

    /// <summary>The entry of the log that says so.</summary>
    internal static BrewAction Filled(PackagePlan plan, PackageQuestion asked, DateTimeOffset at)
    {
        string filled = string.Join(", ", plan.Filled.Select(one => Invariant($"{one.Count} × {one.Kind}")));
        return new BrewAction
        {
            At = at, EntryId = Guid.CreateVersion7(at), Kind = ActionKind.Packaged, Stage = "package", Volume = HotVolume.FromLitres(plan.Filled.Sum(one => one.Litres)),
            Mass = plan.PrimingGrams is { } grams ? Mass.FromKilograms(grams / 1000) : null,
            What = plan.PrimingGrams is { } sugar ? Invariant($"{filled}, {sugar:0} g of {asked.Priming!.Name}") : filled,
            Detail = PackagedDetail.Write(plan, asked),
        };
    }

    /// <summary>Writes down what left the packages, or that they are empty.</summary>
    public Task<int> PouredAsync(OpenGyle gyle, double litres, bool isEmpty, CancellationToken cancellation = default)
    {
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Poured, Stage = "pour", Item = isEmpty ? GyleProgress.Emptied : null, Volume = litres > 0 ? HotVolume.FromLitres(litres) : null, What = isEmpty ? "empty" : "poured" }], cancellation);
    }
}
