using Gylebook.Engine.Readouts;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Packaging;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Tests.Packaging;

/// <summary>Each way to a bottle bomb is refused, and then nothing to weigh is told.</summary>
public sealed class PackageCheckTests
{
    private static readonly FinishedAnswer Yes = new(FinishedVerdict.Finished, "Because it has not moved.", []);
    private static readonly PackageKind Bottle = Kind("bottle", 0.52, 0.5, 3.5, null), Keg = Kind("keg", 18.9, null, null, 9);

    private static readonly PackageQuestion Sound = new()
    {
        Finished = Yes, Litres = new Band(19.2, 19.9, 20.4, "L", BandKind.Quantiles), Fills = [new(Bottle, null)], Volumes = 2.3,
        Priming = PrimingSource.Of("white sugar", Larder.Empty), WarmestSince = 20, WarmestStore = 25,
    };

    /// <summary>What is wrong, and what it is refused for.</summary>
    public static TheoryData<string, string> Bombs => new()
    {
        { "nobody read it", "package.notRead" },
        { "it still falls", "package.moving" },
        { "it is stuck", "package.stuck" },
        { "it stands still a little high", "package.doubtful" },
        { "a yeast that eats dextrin", "package.unending" },
        { "more gas than the bottle is made for", "package.volumes" },
        { "a syrup goes in besides", "package.volumes" },
        { "sugar was weighed by hand, too much", "package.volumes" },
        { "the fermenter gave less beer than the sugar was for", "package.volumes" },
        { "a hot attic", "package.pressure" },
        { "a car in summer", "package.heat" },
        { "a bottle that nobody rated", "package.unrated" },
        { "filled to the brim", "package.brimful" },
        { "filled over the brim", "package.full" },
        { "primed with a food that has starch", "package.starch" },
        { "it holds as much gas already", "package.enough" },
        { "stored cold, and warm one day", "package.cold" },
        { "a burst above the tap's rating", "package.burst" },
        { "nothing to fill it into", "package.none" },
    };

    [Theory]
    [MemberData(nameof(Bombs))]
    public void It_is_refused_and_nothing_to_weigh_is_told(string what, string code)
    {
        PackagePlan plan = PackageCheck.Of(Wrong(what));
        Assert.Contains(plan.Refusals, refusal => refusal.Code == code);
        Assert.All(plan.Refusals, refusal => Assert.NotEqual("", refusal.Instead));
        Assert.Null(plan.PrimingGrams);
        Assert.Null(plan.Volumes);
        Assert.Empty(plan.Filled);
    }

    /// <summary>20 L, 20 °C, 2.4 volumes: 117.5 g of sucrose by the quadratic law of what stays dissolved, which gives 0.861 volumes where the table in use gives 0.88.</summary>
    [Fact]
    public void What_is_sound_is_weighed_as_by_hand()
    {
        PackagePlan plan = PackageCheck.Of(Sound with { Litres = new Band(20, 20, 20, "L", BandKind.Quantiles), Volumes = 2.4 });
        Assert.Empty(plan.Refusals);
        Assert.Equal(117.5 * (2.4 - 0.88) / (2.4 - 0.861), plan.PrimingGrams!.Value, 0.1);
        FilledPackages bottles = Assert.Single(plan.Filled);
        Assert.Equal((40, 20.0), (bottles.Count, bottles.Litres));
        Assert.InRange(bottles.PressureStored, 2.0, 3.0);
    }

    [Fact]
    public void Mixed_packages_share_the_beer_and_the_weakest_decides()
    {
        PackageQuestion mixed = Sound with { Fills = [new(Bottle, 10), new(Keg, null)], WeakestPart = 4 };
        PackagePlan plan = PackageCheck.Of(mixed);
        Assert.Empty(plan.Refusals);
        Assert.Equal([("bottle", 10), ("keg", 1)], plan.Filled.Select(filled => (filled.Kind, filled.Count)));
        Assert.Equal(19.9, plan.Filled.Sum(filled => filled.Litres) + plan.LeftOver, 1e-9);
        Assert.Contains(PackageCheck.Of(mixed with { WeakestPart = 1 }).Refusals, refusal => refusal.Code == "package.pressure");
    }

    [Fact]
    public void A_little_too_warm_a_store_or_a_little_too_much_sugar_turns_it()
    {
        PackageKind weak = Kind("bottle", 0.52, 0.5, null, 3);
        Assert.Empty(PackageCheck.Of(Sound with { Fills = [new(weak, null)] }).Refusals);
        Assert.NotEmpty(PackageCheck.Of(Sound with { Fills = [new(weak, null)], WarmestStore = 35 }).Refusals);
        double grams = PackageCheck.Of(Sound).PrimingGrams!.Value;
        Assert.Empty(PackageCheck.Of(Sound with { PrimingGrams = grams }).Refusals);
        Assert.NotEmpty(PackageCheck.Of(Sound with { PrimingGrams = 2 * grams }).Refusals);
    }

    /// <summary>38 °F and 12 psi make 2.57 volumes (published chart, within its own 0.05); 30 psi five times leave 805 ppm (computed from a published equation).</summary>
    [Fact]
    public void A_keg_is_told_its_pressure_its_haste_and_its_tube()
    {
        double celsius = (38 - 32) / 1.8;
        KegOnTap keg = PackageCheck.Of(Sound with { Fills = [new(Keg, null)], Priming = null, Volumes = 2.57, KegCelsius = celsius, WarmestStore = 10 }).Keg!;
        Assert.Equal(12 * 0.0689475729, keg.GaugeBar, 0.02);
        Assert.InRange(keg.PurgeCycles, 6, 8);
        Assert.True(keg.BurstHours is { } hours && hours.Low < hours.Middle && hours.Middle < hours.High && keg.TasteAfterHours < hours.Low);

        // 12 psi through vinyl of 3/16 inch: 4 ft (published worked value).
        Assert.Equal(4 * 0.3048, keg.LineMetres, 0.05);
        Assert.Null(PackageCheck.Of(Sound).Keg);
        Assert.Equal(1.0, PackageCheck.Of(Sound with { Fills = [new(Keg, null)], Priming = null, WeakestPart = 1, Volumes = 2.4, WarmestStore = 4 }).Keg!.BurstBar);
    }

    private static PackageQuestion Wrong(string what) => what switch
    {
        "nobody read it" => Sound with { Finished = new(FinishedVerdict.NotRead, "", []) },
        "it still falls" => Sound with { Finished = new(FinishedVerdict.NotYet, "", []) },
        "it is stuck" => Sound with { Finished = new(FinishedVerdict.Stuck, "", []) },
        "it stands still a little high" => Sound with { Finished = new(FinishedVerdict.Doubtful, "", []) },
        "a yeast that eats dextrin" => Sound with { Unending = ["a diastatic saison yeast"] },
        "more gas than the bottle is made for" => Sound with { Volumes = 3.9 },
        "a syrup goes in besides" => Sound with { FoodVolumes = 3.2, PrimingGrams = 20 },
        "sugar was weighed by hand, too much" => Sound with { PrimingGrams = 230 },
        "the fermenter gave less beer than the sugar was for" => Sound with { Volumes = 3.4, Litres = new Band(15, 19.9, 20.4, "L", BandKind.Quantiles) },
        "a hot attic" => Sound with { Fills = [new(Kind("bottle", 0.52, 0.5, null, 3), null)], WarmestStore = 38 },
        "a car in summer" => Sound with { WarmestStore = 60 },
        "a bottle that nobody rated" => Sound with { Fills = [new(Kind("bottle", 0.52, 0.5, null, null), null)] },
        "filled to the brim" => Sound with { Fills = [new(Kind("bottle", 0.52, null, 3.5, null), null)] },
        "filled over the brim" => Sound with { Fills = [new(Kind("bottle", 0.5, 0.52, 3.5, null), null)] },
        "primed with a food that has starch" => Sound with { Priming = new("banana", 0.06, 0.05) },
        "it holds as much gas already" => Sound with { WarmestSince = 2, Volumes = 1.5 },
        "stored cold, and warm one day" => Sound with { WarmestStore = 8 },
        "a burst above the tap's rating" => Sound with { Fills = [new(Keg, null)], Priming = null, BurstBar = 3, WeakestPart = 2.8, WarmestStore = 4 },
        "nothing to fill it into" => Sound with { Fills = [] },
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "Not one of the table."),
    };

    private static PackageKind Kind(string name, double brim, double? fill, double? volumes, double? bar) => new(
        name, Litres(brim), fill is { } filled ? Litres(filled) : null,
        volumes is { } most ? new Entered<Carbonation>(Carbonation.FromVolumes(most), Invariant($"{most}")) : null,
        bar is { } rated ? new Entered<GaugePressure>(GaugePressure.FromBar(rated), Invariant($"{rated} bar")) : null);

    private static Entered<VolumeAt20C> Litres(double litres) => new(VolumeAt20C.FromLitres(litres), Invariant($"{litres} L"));
}
