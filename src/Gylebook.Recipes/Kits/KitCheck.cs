using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Kits;

/// <summary>Finds what cannot be, or cannot be meant, in a kit whose quantities are all legal.</summary>
/// <remarks>Bounds on what is sensible are our own, common practice without a source, unless said.</remarks>
public static class KitCheck
{
    private const double LeastConversionPercent = 50;
    private const double MostKeptPerKilogram = 5;
    private const double MostVolumes = 10;

    /// <summary>Less than a light bulb gives. Common practice, no source.</summary>
    private const double LeastKilowatts = 0.05;

    // Latent heat of water at 100 °C, 2256.5 kJ/kg (IAPWS-IF97 steam tables), over 3600 s, for a litre at 20 °C, 0.998 kg.
    private const double KilowattHoursPerLitre = 2256.5 / 3600 * 0.9982;

    /// <summary>All findings at once, each with field, value, limit and reason; empty when nothing is doubtful.</summary>
    public static IReadOnlyList<Finding> Findings(Kit kit)
    {
        var findings = new FindingList();
        Kettle(kit.Kettle, findings);
        Kept(kit.Kettle.HeldBySpentHops, 20, "kettle.heldBySpentHops", "a kilogram of hops", findings);
        Grain(kit, findings);
        Above(kit.Fermenter.Usable, kit.Fermenter.Brim, "fermenter.usable", "it overflows at the brim", findings);
        Above(kit.RackingLeftBehind, kit.Fermenter.Usable, "racking.leftBehind", "nothing would be left to package", findings);
        Temperatures(kit, findings);
        Packages(kit.Packages, findings);
        Vessels(kit.Vessels, findings);
        AboveNought(kit.Cleaning?.Cleaner, "cleaning.cleaner", "0 min", "no label says that it need not stay on", findings);
        AboveNought(kit.Cleaning?.Sanitiser, "cleaning.sanitiser", "0 min", "no label says that it need not stay on", findings);
        return findings.All;
    }

    private static void Kettle(Kettle kettle, FindingList findings)
    {
        Above(kettle.Usable, kettle.Brim, "kettle.usable", "it overflows at the brim", findings);
        Above(kettle.LeftBehind, kettle.Usable, "kettle.leftBehind", "nothing would leave the kettle", findings);
        if (kettle.Usable.Value.Litres == 0)
        {
            findings.Error("vessel.empty", "kettle.usable", $"{kettle.Usable}; must be above 0 L", kettle.Usable.Text, "above 0 L");
        }

        if (kettle.Evaporation.Value.LitresPerHour > kettle.Usable.Value.Litres)
        {
            findings.Error(
                "kettle.evaporation", "kettle.evaporation",
                $"{kettle.Evaporation}; must be at most {kettle.Usable} per hour, or the full kettle boils dry within the hour",
                kettle.Evaporation.Text, kettle.Usable.Text);
        }

        if (kettle.Power is { } heater && heater.Value.Kilowatts < LeastKilowatts)
        {
            var least = Number(LeastKilowatts, "kW");
            findings.Error("kettle.noPower", "kettle.power", $"{heater}; must be at least {least}, or left out: it would not even hold a mash warm", heater.Text, least);
            return;
        }

        var needed = kettle.Evaporation.Value.LitresPerHour * KilowattHoursPerLitre;
        if (kettle.Power is { } power && power.Value.Kilowatts < needed)
        {
            var limit = Number(needed, "kW");
            findings.Warning("kettle.power", "kettle.power", $"{power}; boiling off {kettle.Evaporation} takes at least {limit} of heat", power.Text, limit);
        }

    }

    private static void Grain(Kit kit, FindingList findings)
    {
        if (kit.Conversion.Value.Ratio == 0)
        {
            findings.Error("kit.conversion", "conversion", $"{kit.Conversion}; must be above 0 %, or no mash gives anything", kit.Conversion.Text, "above 0 %");
        }
        else if (kit.Conversion.Value.Percent < LeastConversionPercent)
        {
            findings.Warning(
                "kit.conversionLow", "conversion", Invariant($"{kit.Conversion}; below {LeastConversionPercent} % something is wrong with the crush, the enzymes or the reading"),
                kit.Conversion.Text, Invariant($"{LeastConversionPercent} %"));
        }

        if (kit.Tun is { } tun)
        {
            Above(tun.DeadSpace, tun.Brim, "tun.deadSpace", "nothing would run off", findings);
            Kept(tun.LiquorKept, MostKeptPerKilogram, "tun.liquorKept", "a kilogram of grist", findings);
        }

        if (kit.Bag is { } bag)
        {
            Kept(bag.LiquorKept, MostKeptPerKilogram, "bag.liquorKept", "a kilogram of grist", findings);
        }
    }

    private static void Temperatures(Kit kit, FindingList findings)
    {
        Between(kit.GrainTemperature, -30, 60, "grainTemperature", "grain is stored at the temperature of a room", findings);
        AboveNought(kit.MashCooling, "mashCooling", "0 h", "nothing cools at once", findings);
        AboveNought(kit.WortCooling, "wortCooling", "0 h", "nothing cools at once", findings);
        if (kit.Chiller is { } chiller)
        {
            ChillerCheck.Check(chiller, findings);
        }

        if (kit.Altitude is { } altitude && altitude.Value.Metres is < -450 or > 6000)
        {
            findings.Error(
                "kit.altitude", "altitude", $"{kit.Altitude}; must be -450 m to 6000 m: nobody lives lower or higher", kit.Altitude.Value.Text, "-450 m to 6000 m");
        }
    }

    private static void Packages(IReadOnlyList<PackageKind> packages, FindingList findings)
    {
        if (packages.Count == 0)
        {
            findings.Error("package.none", "packages", "no package; write at least one, or the beer has nowhere to go", "0", "1");
        }

        for (var i = 0; i < packages.Count; i++)
        {
            var package = packages[i];
            if (package.Brim.Value.Litres == 0)
            {
                findings.Error("vessel.empty", Invariant($"packages[{i}].brim"), $"{package.Brim}; must be above 0 L", package.Brim.Text, "above 0 L");
            }

            if (package.Fill is { } fill)
            {
                Above(fill, package.Brim, Invariant($"packages[{i}].fill"), "it overflows at the brim", findings);
            }

            Ratings(package, Invariant($"packages[{i}]"), findings);
            if (packages.Take(i).Any(before => before.Kind == package.Kind))
            {
                findings.Error("package.twice", Invariant($"packages[{i}].kind"), $"\"{package.Kind}\" names an earlier package too; recipes could not tell them apart", package.Kind);
            }
        }
    }

    private static void Vessels(IReadOnlyList<Vessel> vessels, FindingList findings)
    {
        foreach ((int i, Vessel vessel) in vessels.Index())
        {
            if (vessel.Holds is { } holds && holds.Value.Litres == 0)
            {
                findings.Error("vessel.empty", Invariant($"vessels[{i}].holds"), $"{holds}; must be above 0 L", holds.Text, "above 0 L");
            }

            if (vessel.Name.Length > 0 && vessels.Take(i).Any(before => string.Equals(before.Name, vessel.Name, StringComparison.OrdinalIgnoreCase)))
            {
                findings.Error("vessel.twice", Invariant($"vessels[{i}].name"), $"\"{FindingList.Shorten(vessel.Name)}\" names an earlier vessel too; a gyle could not tell them apart", vessel.Name);
            }
        }
    }

    private static void Ratings(PackageKind package, string where, FindingList findings)
    {
        if (package.MaxVolumes is { } volumes && volumes.Value.Volumes > MostVolumes)
        {
            findings.Error(
                "package.maxVolumes", $"{where}.maxVolumes", Invariant($"{volumes}; must be at most {MostVolumes}: no bottle or keg holds more; read the maker's rating"),
                volumes.Text, Invariant($"{MostVolumes}"));
        }

        if (package.MaxPressure is { } pressure && pressure.Value.Bar <= 0)
        {
            findings.Error("package.maxPressure", $"{where}.maxPressure", $"{pressure}; must be above 0 bar; read the maker's rating", pressure.Text, "above 0 bar");
        }
    }

    private static void Above(Entered<VolumeAt20C> inside, Entered<VolumeAt20C> whole, string where, string reason, FindingList findings)
    {
        if (inside.Value.Litres > whole.Value.Litres)
        {
            findings.Error("vessel.over", where, $"{inside}; must be at most {whole}: {reason}", inside.Text, whole.Text);
        }
    }

    private static void AboveNought(Entered<Duration>? time, string where, string nought, string reason, FindingList findings)
    {
        if (time is { } given && given.Value.Minutes == 0)
        {
            findings.Error($"kit.{where}", where, $"{given}; must be above {nought}: {reason}", given.Text, $"above {nought}");
        }
    }

    private static void Kept(Entered<SpecificVolume> kept, double most, string where, string ofWhat, FindingList findings)
    {
        if (kept.Value.LitresPerKilogram > most)
        {
            var limit = Number(most, "L/kg");
            findings.Error("kit.kept", where, $"{kept}; must be at most {limit}: {ofWhat} cannot hold more", kept.Text, limit);
        }
    }

    internal static void Between(Entered<Temperature> entered, double low, double high, string where, string reason, FindingList findings)
    {
        if (entered.Value.Celsius < low || entered.Value.Celsius > high)
        {
            var limit = Invariant($"{low} °C to {high} °C");
            findings.Error("kit.temperature", where, $"{entered}; must be {limit}: {reason}", entered.Text, limit);
        }
    }

    private static string Number(double value, string unit) => Invariant($"{value:0.##} {unit}");
}
