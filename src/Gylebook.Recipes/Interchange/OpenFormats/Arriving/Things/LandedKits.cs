using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;

/// <summary>Equipment from elsewhere as a kit: what the file says of it, and all else as another kit has it.</summary>
internal static class LandedKits
{
    /// <summary>Share of the brim below the foam. Common practice, no source.</summary>
    private const double UsableShare = 0.85;

    /// <summary>The kit.</summary>
    public static Kit Of(OpenKit theirs, Landing landing)
    {
        Kit kit = landing.Wishes.Kit with { Learned = [], Vessels = [] };
        string name = OpenNames.Of(theirs.Name, "Kit without a name", $"{theirs.Path}.name", landing.Travels);
        HashSet<VesselForm> taken = [];
        foreach (OpenVessel vessel in theirs.Vessels)
        {
            if (vessel.Form is not { } form || form is VesselForm.HotLiquor or VesselForm.Aging)
            {
                landing.Travels.Leave(vessel.Path, $"{vessel.Name}: {Kind(vessel.Form)} has no place in a kit");
            }
            else if (form != VesselForm.Package && !taken.Add(form == VesselForm.LauterTun ? VesselForm.MashTun : form))
            {
                landing.Travels.Leave(vessel.Path, $"{vessel.Name}: a kit has one of these");
            }
            else
            {
                kit = With(kit, vessel, form, landing.Travels);
            }
        }

        landing.Travels.Default(theirs.Path, $"{name}: all that the file does not say of it is as in the kit {landing.Wishes.Kit.Name}");
        return kit with { Name = name };
    }

    private static string Kind(VesselForm? form) => form switch
    {
        VesselForm.HotLiquor => "a vessel for hot liquor",
        VesselForm.Aging => "a vessel to age beer in",
        _ => "a vessel of no kind that can be read",
    };

    private static Kit With(Kit kit, OpenVessel vessel, VesselForm form, TravelList travels) => form switch
    {
        VesselForm.Kettle => kit with { Kettle = Kettle(kit.Kettle, vessel, travels) },
        VesselForm.MashTun or VesselForm.LauterTun => kit with { Tun = Tun(kit, vessel, travels), Bag = null },
        VesselForm.Fermenter => kit with
        {
            Fermenter = Brim(vessel) is { } brim ? new Fermenter(brim, Usable(brim, vessel, travels)) : kit.Fermenter,
            RackingLeftBehind = vessel.Keeps ?? kit.RackingLeftBehind,
        },
        _ => kit with { Packages = Packages(kit, vessel, travels) },
    };

    private static Kettle Kettle(Kettle kettle, OpenVessel vessel, TravelList travels)
    {
        Entered<VolumeAt20C>? brim = Brim(vessel);
        return kettle with
        {
            Brim = brim ?? kettle.Brim,
            Usable = brim is { } there ? Usable(there, vessel, travels) : kettle.Usable,
            LeftBehind = vessel.Keeps ?? kettle.LeftBehind,
            Evaporation = vessel.BoiledOff is { } off && UnitTable.TryParse(Invariant($"{off.Value.Litres:0.####} L/h"), out Entered<Evaporation> rate, out _) ? rate : kettle.Evaporation,
        };
    }

    private static Tun Tun(Kit kit, OpenVessel vessel, TravelList travels)
    {
        Entered<SpecificVolume> kept = vessel.GrainKeeps ?? kit.Tun?.LiquorKept ?? kit.Bag?.LiquorKept ?? new(SpecificVolume.FromLitresPerKilogram(1), "1 L/kg");
        bool isWeighed = vessel is { Weight: not null, SpecificHeat: not null };
        double kilojoules = isWeighed ? vessel.Weight!.Value.Value.Kilograms * vessel.SpecificHeat!.Value : 0;
        Entered<HeatCapacity> heat = UnitTable.TryParse(Invariant($"{kilojoules:0.###} kJ/K"), out Entered<HeatCapacity> entered, out _) ? entered : default;
        if (!isWeighed)
        {
            travels.Default(vessel.Path, $"{vessel.Name}: {heat} of heat that the tun takes up; the file does not say its weight and what it is made of");
        }

        if (vessel.GrainKeeps is null)
        {
            travels.Default(vessel.Path, $"{vessel.Name}: {kept} kept by the grain, as in the kit {kit.Name}");
        }

        return new Tun(Brim(vessel) ?? kit.Kettle.Brim, vessel.Keeps ?? new(VolumeAt20C.FromLitres(0), "0 L"), heat, kept);
    }

    private static List<PackageKind> Packages(Kit kit, OpenVessel vessel, TravelList travels)
    {
        string name = OpenNames.Of(vessel.Name, "package", $"{vessel.Path}.name", travels);
        if (Brim(vessel) is { } brim)
        {
            return [new PackageKind(name, brim, null, null, null), .. kit.Packages.Where(kind => kind.Kind != name)];
        }

        travels.Leave(vessel.Path, $"{name}: a package needs its litres");
        return [.. kit.Packages];
    }

    private static Entered<VolumeAt20C>? Brim(OpenVessel vessel) => vessel.Holds is { Value.Litres: > 0 } brim ? brim : null;

    private static Entered<VolumeAt20C> Usable(Entered<VolumeAt20C> brim, OpenVessel vessel, TravelList travels)
    {
        Entered<VolumeAt20C> usable = new(VolumeAt20C.FromLitres(brim.Value.Litres * UsableShare), Invariant($"{brim.Value.Litres * UsableShare:0.##} L"));
        travels.Default(vessel.Path, Invariant($"{vessel.Name}: {usable} usable below the foam, {100 * UsableShare:0} % of the brim; common practice, no source"));
        return usable;
    }
}
