using Gylebook.Gyles.Cellar;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Packaging;

/// <summary>Packages beer, or refuses to.</summary>
/// <remarks>
/// <para>Source: gas kept open to the air by <see cref="ResidualCarbonDioxide"/>, gas of sugar by stoichiometry, pressure by
/// <see cref="BottlePressure"/> without headspace, which is the careful figure. Ratings are the kit's, as its maker gives them.</para>
/// <para>Notes: the gas is counted at the least beer there may be (5 %): one weight of sugar in less beer is more gas.</para>
/// </remarks>
public static class PackageCheck
{
    private const double MostCelsius = 40, ColdestStore = 0;

    /// <summary>The plan, or why there is none.</summary>
    public static PackagePlan Of(PackageQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        double residual = ResidualCarbonDioxide.VolumesAt(asked.WarmestSince, 100 * asked.AirBar);
        double grams = Grams(asked, residual), likely = Gas(asked, residual, grams, asked.Litres.Likely), most = Gas(asked, residual, grams, asked.Litres.Low);
        PackageRefusal[] refusals = [.. Unfinished(asked), .. Missing(asked), .. Sugar(asked, residual), .. asked.Fills.SelectMany(fill => Ratings(asked, fill, likely, most))];
        if (refusals.Length > 0)
        {
            return new PackagePlan { Refusals = [.. refusals.DistinctBy(refusal => (refusal.Code, refusal.Why))], Residual = residual };
        }

        KegOnTap? keg = asked.Fills.FirstOrDefault(fill => fill.IsKeg) is { } first ? KegOnTap.Of(asked, Math.Min(first.LitresEach, Math.Max(1, asked.Litres.Likely)), residual, Weakest(asked, first)) : null;
        (FilledPackages[] filled, double left) = Filled(asked, likely, keg);
        return new PackagePlan
        {
            Refusals = [], Filled = filled, LeftOver = left, Residual = residual, Volumes = likely,
            PrimingGrams = asked.Priming is null ? null : grams, VolumesBand = asked.Priming is null ? null : (Gas(asked, residual, grams, asked.Litres.High), most),
            Keg = keg,
            Cautions = [.. Cautions(asked)],
        };
    }

    private static double Grams(PackageQuestion asked, double residual) => asked.Priming is not { } priming ? 0
        : asked.PrimingGrams ?? (Math.Max(0, asked.Volumes - residual - asked.FoodVolumes) * Carbonation.GramsPerLitreInOneVolume * asked.Litres.Likely / priming.GasGramsPerGram);

    private static double Gas(PackageQuestion asked, double residual, double grams, double litres) => asked.Priming is not { } priming
        ? Math.Max(asked.Volumes, residual + asked.FoodVolumes)
        : residual + asked.FoodVolumes + (grams * priming.GasGramsPerGram / Math.Max(0.1, litres) / Carbonation.GramsPerLitreInOneVolume);

    private static IEnumerable<PackageRefusal> Unfinished(PackageQuestion asked)
    {
        (string Code, string Instead)? refused = asked.Finished.Verdict switch
        {
            FinishedVerdict.NotRead => ("package.notRead", "Read the gravity today and in two days."),
            FinishedVerdict.NotYet => ("package.moving", "Wait until it stands still for two days, and nothing sweet has yet to ferment."),
            FinishedVerdict.Stuck => ("package.stuck", "Wake the yeast, or find out with a forced ferment whether sugar is left."),
            FinishedVerdict.Doubtful => ("package.doubtful", "A forced ferment tells: where it ends within two points of the beer, the beer is done."),
            _ => null,
        };
        if (refused is var (code, instead))
        {
            yield return new(code, $"It is not finished. {asked.Finished.Because}", instead);
        }

        if (asked.Unending.Count > 0 && !asked.HasForced)
        {
            yield return new("package.unending", $"{string.Join(" and ", asked.Unending)} goes on for months where another yeast stops: standing still is not the end.", "Start a forced ferment with the same culture, and package when the beer is within two points of it.");
        }
    }

    private static IEnumerable<PackageRefusal> Missing(PackageQuestion asked)
    {
        if (asked.Fills.Count == 0)
        {
            yield return new("package.none", "Nothing is chosen to fill it into.", "Choose a package of the kit.");
        }

        if (asked.WarmestStore < asked.WarmestSince && asked.Fills.Any(fill => !fill.IsKeg) && asked.Priming is not null && asked.WarmestStore < 15)
        {
            yield return new("package.cold", Invariant($"At {asked.WarmestStore:0} °C the yeast will hardly ferment what it is primed with, and it will when the bottles come to stand warm."), "Give the warmest that they may come to stand: the first two weeks are warm.");
        }

        if (asked.WarmestStore is > MostCelsius or < ColdestStore)
        {
            yield return new("package.heat", Invariant($"{asked.WarmestStore:0} °C is out of what pressures are known for, {ColdestStore:0} to {MostCelsius:0} °C."), "Store it cooler: heat bursts bottles that were sound.");
        }
    }

    private static IEnumerable<PackageRefusal> Sugar(PackageQuestion asked, double residual)
    {
        if (asked.Priming is { Starch: > 0.01 } food)
        {
            yield return new("package.starch", $"{food.Name} has starch: an enzyme of yeast or of another food may make sugar of it in the bottle, and nobody can say how much.", "Prime with a sugar.");
        }

        if (asked.Priming is not null && asked.PrimingGrams is null && residual + asked.FoodVolumes > asked.Volumes + 0.05)
        {
            yield return new("package.enough", Invariant($"There are {residual + asked.FoodVolumes:0.0} volumes in it without priming ({residual:0.0} dissolved, {asked.FoodVolumes:0.0} from what goes in), and {asked.Volumes:0.0} are wanted."), "Ask for more gas, or leave out what is sweet.");
        }
    }

    private static IEnumerable<PackageRefusal> Ratings(PackageQuestion asked, PackageFill fill, double likely, double most)
    {
        string name = fill.Kind.Kind;
        double stored = BottlePressure.GaugeBar(most, Math.Clamp(asked.WarmestStore, ColdestStore, MostCelsius), 0, asked.AirBar);
        double? weakest = Weakest(asked, fill);
        if (fill.Kind.MaxVolumes is null && weakest is null)
        {
            yield return new("package.unrated", $"Nobody says what {name} of this kit may hold: neither volumes of gas nor a pressure.", "Write the maker's figure into the kit. A bottle that was made for still drinks or wine holds none.");
        }

        if (fill.Kind.MaxVolumes?.Value.Volumes is { } made && Math.Max(likely, most) > made)
        {
            yield return new("package.volumes", Invariant($"{name}: {most:0.0} volumes if as little beer comes out as may, and it is made for {made:0.0}."), Invariant($"Ask for less gas, or take stronger packages. At {asked.Volumes - (most - made) - 0.05:0.0} volumes it would do."));
        }

        if (weakest is { } holds && stored > holds)
        {
            yield return new("package.pressure", Invariant($"{name}: {stored:0.0} bar at {asked.WarmestStore:0} °C, and its weakest part is rated for {holds:0.0} bar."), "Store it cooler, ask for less gas, or change the weakest part.");
        }

        if (asked.BurstBar is { } burst && fill.IsKeg && weakest is { } limit && burst > limit)
        {
            yield return new("package.burst", Invariant($"{name}: {burst:0.0} bar on the gauge, and its weakest part is rated for {limit:0.0} bar."), Invariant($"Stay below {limit:0.0} bar and wait longer."));
        }

        if (!fill.IsKeg && fill.Kind.Fill is { } filled && filled.Value.Litres > fill.Kind.Brim.Value.Litres)
        {
            yield return new("package.full", Invariant($"{name}: {filled.Value.Litres:0.00} L are more than its brim, {fill.Kind.Brim.Value.Litres:0.00} L."), "Leave a finger's breadth of air: beer that warms has to go somewhere, and a full bottle bursts.");
        }
        else if (!fill.IsKeg && fill.Kind.Fill is null)
        {
            yield return new("package.brimful", $"{name} would be filled to the brim.", "Say in the kit how much it is filled with: a full bottle bursts when its beer warms.");
        }
    }

    private static double? Weakest(PackageQuestion asked, PackageFill fill) =>
        fill.Kind.MaxPressure?.Value.Bar is var rated && fill.IsKeg && asked.WeakestPart is { } part ? Math.Min(part, rated ?? part) : rated;

    private static (FilledPackages[] Filled, double Left) Filled(PackageQuestion asked, double volumes, KegOnTap? keg)
    {
        double left = asked.Litres.Likely;
        List<FilledPackages> filled = [];
        foreach (PackageFill fill in asked.Fills)
        {
            int whole = (int)Math.Floor((left / fill.LitresEach) + 1e-9), count = Math.Min(fill.Count ?? (fill.IsKeg ? Math.Max(1, whole) : whole), fill.IsKeg ? int.MaxValue : whole);
            double litres = Math.Min(left, count * fill.LitresEach);
            filled.Add(new(fill.Kind.Kind, count, litres, BottlePressure.GaugeBar(volumes, asked.WarmestStore, 0, asked.AirBar))
            {
                Oxygen = count > 0 && litres > 0 ? PackageOxygen.Of(fill, litres / count, fill.IsKeg && keg is not null ? Purging.OxygenLeft(keg.PurgeCycles, keg.PurgeBar, asked.AirBar) : null) : null,
            });
            left -= litres;
        }

        return ([.. filled], left);
    }

    private static IEnumerable<string> Cautions(PackageQuestion asked)
    {
        if (asked.Fills.Any(fill => !fill.IsKeg))
        {
            yield return "Glass bursts. Sound bottles made for pressure, in a closed box, for two weeks; eye protection when you move or open them. Open one after a week, cold, over the sink.";
        }

        if (asked.Fills.Any(fill => fill.IsKeg))
        {
            yield return "A keg holds a pressure that throws its parts. Let the gas out before you open anything, go by the rating on its weakest part, and fasten the cylinder upright.";
            yield return GasCaution.Sentence;
        }

        if (asked.Priming is not null)
        {
            yield return "Boil what you prime with in a little water, and let it cool before you stir it in: hot syrup scalds, and beer foams.";
        }
    }
}
