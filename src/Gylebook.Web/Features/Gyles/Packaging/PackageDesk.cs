using Gylebook.Forecast.Report;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Packaging;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Gyles.Cellar;

namespace Gylebook.Web.Features.Gyles.Packaging;

/// <summary>A gyle that is to be packaged: what it is brewed from, what is expected of it, how it ferments.</summary>
/// <param name="Gyle">The gyle.</param>
/// <param name="Inputs">What it was brewed from.</param>
/// <param name="Live">Its forecast with all that was read.</param>
/// <param name="Fermentation">How it ferments; null before the pitch.</param>
/// <param name="Portion">The portion, as the forecast tells it.</param>
public sealed record OpenPackage(OpenGyle Gyle, GyleInputs Inputs, BrewForecast Live, Fermentation? Fermentation, PortionView Portion)
{
    /// <summary>What comes of a wish.</summary>
    public (PackageQuestion? Asked, PackagePlan? Plan, string? Wrong) Of(PackageWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        (PackageQuestion? asked, string? wrong) = wish.Of(Inputs, Live, Portion, Fermentation, Gyle.Log.ReadingsOf(Portion.Name).Any(reading => reading.Stage == ForcedFerment.Stage));
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
    /// <summary>So many times a usual dose is a slip of the finger.</summary>
    private const double MostTimes = 10;

    /// <summary>A gyle to be packaged, or a portion of it; null where this program can no longer read its plan.</summary>
    public async Task<OpenPackage?> OpenAsync(OpenGyle gyle, string? portion = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        Fermentation? fermentation = await cellar.OpenAsync(gyle, portion, cancellation);
        return await Task.Run(
            () => gyle.Inputs is { } inputs && gyle.Live(fermentation) is { } live ? new OpenPackage(gyle, inputs, live, fermentation, PortionView.Of(live, gyle.Division, portion)) : null,
            cancellation);
    }

    /// <summary>Writes down that it was packaged so. A plan that is refused is not taken.</summary>
    /// <exception cref="InvalidOperationException">The plan is refused.</exception>
    public Task<int> PackagedAsync(OpenPackage of, PackagePlan plan, PackageQuestion asked, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(of);
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.IsRefused)
        {
            throw new InvalidOperationException(plan.Refusals[0].Why);
        }

        return desk.DoAsync(of.Gyle, [Filled(plan, asked, clock.GetUtcNow()) with { Portion = of.Portion.Name }], cancellation);
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

    /// <summary>Writes down that something was given that helps it to clear.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="portion">To which portion; null for the whole.</param>
    /// <param name="what">What, by the table of finings.</param>
    /// <param name="amount">How much, as typed: "3 g".</param>
    /// <param name="litres">Into how much, L.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>What is wrong with it; null once it is in the book.</returns>
    public async Task<string?> FineAsync(OpenGyle gyle, string? portion, string what, string amount, double litres, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(amount);
        if (Finings.Find(what) is not { Match: { } fining })
        {
            return $"what: \"{what}\"; must be one of {string.Join(", ", Finings.OfBeer.Select(known => known.Name))}";
        }

        if (fining.IsForTheKettle)
        {
            return $"what: {fining.Name}; it goes into the kettle, and does nothing in cold beer";
        }

        (double? given, string problem) = FiningWords.Read(fining, amount);
        double most = MostTimes * fining.DoseFor(litres).High;
        if (given is not { } dose || dose <= 0 || dose > most)
        {
            return given is null ? $"how much: {problem}" : Invariant($"how much: {amount}; must be above 0 and at most {most:0.#} {fining.Unit}, ten times what is usual for {litres:0.0} L");
        }

        DateTimeOffset now = clock.GetUtcNow();
        await desk.DoAsync(
            gyle,
            [
                new BrewAction
                {
                    At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Fined, Stage = "ferment", Portion = portion, Item = fining.Id, What = $"{amount.Trim()} {fining.Name}",
                    Mass = fining.Unit == "g" ? Mass.FromKilograms(dose / 1000) : null, Volume = fining.Unit == "mL" ? HotVolume.FromLitres(dose / 1000) : null,
                },
            ],
            cancellation);
        return null;
    }

    /// <summary>Writes down what left the packages, or that they are empty.</summary>
    public Task<int> PouredAsync(OpenGyle gyle, string? portion, double litres, bool isEmpty, CancellationToken cancellation = default)
    {
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Poured, Stage = "pour", Portion = portion, Item = isEmpty ? GyleProgress.Emptied : null, Volume = litres > 0 ? HotVolume.FromLitres(litres) : null, What = isEmpty ? "empty" : "poured" }], cancellation);
    }
}
