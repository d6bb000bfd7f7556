using System.Globalization;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The fields of a kit, in the order of its file.</summary>
internal static class KitForm
{
    // Starting values: all is poured, so no solids stay (a definition); whole hops keep 6 L/kg (a trade sheet's drained
    // hop back); a racking cane leaves a tenth of a litre (common practice, no source).
    private static readonly Entered<Fraction> NoSolidsLeft = new(Fraction.FromPercent(0), "0 %");
    private static readonly Entered<SpecificVolume> HeldBySpentHops = new(SpecificVolume.FromLitresPerKilogram(6), "6 L/kg");
    private static readonly Entered<VolumeAt20C> RackingLeftBehind = new(VolumeAt20C.FromLitres(0.1), "0.1 L");

    private static readonly FieldNotes Shown = new() { IsAlwaysWritten = true };

    private static readonly Form<Kettle> Kettle = new Form<Kettle>(new Kettle(default, default, default, null, default, NoSolidsLeft, HeldBySpentHops)) { About = "The kettle and its burner." }
        .Need("brim", "to the brim", Leaves.Of<VolumeAt20C>(), k => k.Brim, (k, v) => k with { Brim = v })
        .Need("usable", "usable at work", Leaves.Of<VolumeAt20C>(), k => k.Usable, (k, v) => k with { Usable = v }, new("below the foam"))
        .Need("evaporation", "boiled off", Leaves.Of<Evaporation>(), k => k.Evaporation, (k, v) => k with { Evaporation = v }, new("water, per hour of boil"))
        .May("power", "burner or element", Leaves.Of<Power>(), k => k.Power, (k, v) => k with { Power = v }, new("heat that reaches the kettle") { IsAlwaysWritten = true })
        .Need("leftBehind", "clear wort left behind", Leaves.Of<VolumeAt20C>(), k => k.LeftBehind, (k, v) => k with { LeftBehind = v }, new("what cannot be poured or pumped out"))
        .Else("solidsLeft", "solids left behind", Leaves.Of<Fraction>(), k => k.SolidsLeft, (k, v) => k with { SolidsLeft = v }, NoSolidsLeft, NoSolidsLeft.Text, new("share of break and food; 0 % when all is poured"))
        .Else("heldBySpentHops", "wort held by whole hops", Leaves.Of<SpecificVolume>(), k => k.HeldBySpentHops, (k, v) => k with { HeldBySpentHops = v }, HeldBySpentHops, HeldBySpentHops.Text, new("per mass of hops; 6 L/kg when left out"));

    private static readonly Form<Tun> Tun = new Form<Tun>(new Tun(default, default, default, default)) { About = "The mash tun; null when the bag stands in the kettle." }
        .Need("brim", "to the brim", Leaves.Of<VolumeAt20C>(), t => t.Brim, (t, v) => t with { Brim = v })
        .Need("deadSpace", "below the outlet", Leaves.Of<VolumeAt20C>(), t => t.DeadSpace, (t, v) => t with { DeadSpace = v })
        .Need("heatCapacity", "heat the tun takes up", Leaves.Of<HeatCapacity>(), t => t.HeatCapacity, (t, v) => t with { HeatCapacity = v }, new("for each degree, when it starts cold"))
        .Need("liquorKept", "liquor kept by the bed", Leaves.Of<SpecificVolume>(), t => t.LiquorKept, (t, v) => t with { LiquorKept = v }, new("Liquor in less wort out, for each kilogram of grist."));

    private static readonly Form<Bag> Bag = new Form<Bag>(new Bag(default, default, false)) { About = "The bag; null when there is none." }
        .Need("liquorKept", "liquor kept by the bag", Leaves.Of<SpecificVolume>(), b => b.LiquorKept, (b, v) => b with { LiquorKept = v }, new("Liquor in less wort out, for each kilogram of grist."))
        .Need("rinsingShare", "rinsed by a pour", Leaves.Of<Fraction>(), b => b.RinsingShare, (b, v) => b with { RinsingShare = v }, new("share of the held wort that a poured rinse mixes with"))
        .Need("brewsInKettle", "it hangs in the kettle, warm already", Leaves.Flag, b => b.BrewsInKettle, (b, v) => b with { BrewsInKettle = v });

    /// <summary>The bare numbers carry their unit in the key.</summary>
    private static readonly Form<Chiller> Chiller = new Form<Chiller>(new Chiller("", null)) { About = "What cools the wort; null for nothing." }
        .Need("kind", "kind", Leaves.Name, c => c.Kind, (c, v) => c with { Kind = v }, new("immersion, counterflow, plate or none."))
        .May("coolant", "cooling water", Leaves.Of<Temperature>(), c => c.Coolant, (c, v) => c with { Coolant = v }, new("as it comes out of the tap"))
        .May("litresPerMinute", "cooling water, L/min", Leaves.Number(0.01, 1000), c => c.LitresPerMinute, (c, v) => c with { LitresPerMinute = v }, new("a bucket and a watch tell it"))
        .May("kilowattsPerKelvin", "heat it carries, kW/K", Leaves.Number(0.001, 1000), c => c.KilowattsPerKelvin, (c, v) => c with { KilowattsPerKelvin = v }, new("for each degree between wort and water; read it off one chilling of yours"))
        .May("wortLitresPerMinute", "wort through it, L/min", Leaves.Number(0.01, 1000), c => c.WortLitresPerMinute, (c, v) => c with { WortLitresPerMinute = v }, new("of a counterflow or plate chiller; as fast as still reaches the pitch when left out"));

    private static readonly Form<Fermenter> Fermenter = new Form<Fermenter>(new Fermenter(default, default)) { About = "The fermenter." }
        .Need("brim", "to the brim", Leaves.Of<VolumeAt20C>(), f => f.Brim, (f, v) => f with { Brim = v })
        .Need("usable", "usable below the foam", Leaves.Of<VolumeAt20C>(), f => f.Usable, (f, v) => f with { Usable = v });

    private static readonly Form<PackageKind> Package = new Form<PackageKind>(new PackageKind("", default, null, null, null)) { About = "A kind of package at hand." }
        .Need("kind", "kind", Leaves.Name, p => p.Kind, (p, v) => p with { Kind = v }, new("What recipes call it by."))
        .Need("brim", "holds, to the brim", Leaves.Of<VolumeAt20C>(), p => p.Brim, (p, v) => p with { Brim = v })
        .May("fill", "filled with", Leaves.Of<VolumeAt20C>(), p => p.Fill, (p, v) => p with { Fill = v }, new("the brim when left out"))
        .May("maxVolumes", "made for at most", new BareVolumes(), p => p.MaxVolumes, (p, v) => p with { MaxVolumes = v }, new("volumes of CO2 per volume of beer, as its maker says; never guess"))
        .May("maxPressure", "rated for", Leaves.Of<GaugePressure>(), p => p.MaxPressure, (p, v) => p with { MaxPressure = v }, new("gauge pressure, as its maker says; never guess"));

    private static readonly Form<Vessel> Vessel = new Form<Vessel>(new Vessel("", default, null)) { About = "A fermenter or a keg that has a name." }
        .Need("name", "name", Leaves.Name, v => v.Name, (v, name) => v with { Name = name }, new("What stands on its lid; no two have the same."))
        .Need("kind", "kind", Leaves.Word(FileWords.VesselKinds), v => v.Kind, (v, kind) => v with { Kind = kind }, new("A fermenter holds a gyle from cast to package, a keg from then on until it is empty."))
        .May("holds", "holds, to the brim", Leaves.Of<VolumeAt20C>(), v => v.Holds, (v, holds) => v with { Holds = holds }, new("Nothing is planned by it: a gyle that would not fit is told of."));

    private static readonly Form<Cleaning> Cleaning = new Form<Cleaning>(new Cleaning(null, null)) { About = "Contact times, as the products' own labels say." }
        .May("cleaner", "cleaner stays on", Leaves.Of<Duration>(), c => c.Cleaner, (c, v) => c with { Cleaner = v }, new("contact time on its label"))
        .May("sanitiser", "sanitiser stays on", Leaves.Of<Duration>(), c => c.Sanitiser, (c, v) => c with { Sanitiser = v }, new("contact time on its label"));

    private static readonly Form<Instruments> Instruments = new Form<Instruments>(new Instruments(null, null, null, null)) { About = "How far they may be off." }
        .May("hydrometer", "hydrometer", Spelled.PlusMinus, i => i.Hydrometer, (i, v) => i with { Hydrometer = v }, new(Placeholder: "± 0.001"))
        .May("volume", "volume marks", Spelled.PlusMinusOf<VolumeAt20C>(), i => i.Volume, (i, v) => i with { Volume = v }, new(Placeholder: "± 0.3 L"))
        .May("thermometer", "thermometer", Spelled.PlusMinusOf<TemperatureDifference>(), i => i.Thermometer, (i, v) => i with { Thermometer = v }, new(Placeholder: "± 0.5 °C"))
        .May("scale", "scale", Spelled.PlusMinusOf<Mass>(), i => i.Scale, (i, v) => i with { Scale = v }, new(Placeholder: "± 2 g"));

    /// <summary>The whole.</summary>
    public static readonly FileForm<Kit> File = new(
        KitFile.Format,
        "A Gylebook kit",
        new Form<Kit>(new Kit
        {
            Name = "", Kettle = Kettle.Blank, Conversion = default, Fermenter = Fermenter.Blank, RackingLeftBehind = RackingLeftBehind, Packages = [], GrainTemperature = default,
        })
        { About = "One brewer's equipment as numbers." }
            .Need("name", "name", Leaves.Name, k => k.Name, (k, v) => k with { Name = v })
            .Need("kettle", "kettle", Kettle, k => k.Kettle, (k, v) => k with { Kettle = v })
            .May("tun", "tun", Tun, k => k.Tun, (k, v) => k with { Tun = v }, Shown)
            .Add(new RackingField())
            .May("bag", "bag", Bag, k => k.Bag, (k, v) => k with { Bag = v }, Shown)
            .Need("conversion", "conversion", Leaves.Of<Fraction>(), k => k.Conversion, (k, v) => k with { Conversion = v }, new("of the grist's laboratory extract that your mash reaches"))
            .May("mashCooling", "a standing mash cools in", Leaves.Of<Duration>(), k => k.MashCooling, (k, v) => k with { MashCooling = v }, new("time to lose 63 % of its warmth over the room"))
            .May("chiller", "chiller", Chiller, k => k.Chiller, (k, v) => k with { Chiller = v }, Shown)
            .May("wortCooling", "a closed vessel cools in", Leaves.Of<Duration>(), k => k.WortCooling, (k, v) => k with { WortCooling = v }, new("time to lose 63 % of its warmth over the room, full of hot wort"))
            .Need("fermenter", "fermenter", Fermenter, k => k.Fermenter, (k, v) => k with { Fermenter = v })
            .Need("packages", "packages", new ListForm<PackageKind>(Package) { MatchedBy = ["kind"], ItemSaid = "package" }, k => k.Packages, (k, v) => k with { Packages = v })
            .MayList("vessels", "vessels", new ListForm<Vessel>(Vessel) { MatchedBy = ["name"], ItemSaid = "vessel" }, k => k.Vessels, (k, v) => k with { Vessels = v }, new("Fermenters and kegs by name, for the calendar of vessels."))
            .May("cleaning", "cleaning", Cleaning, k => k.Cleaning, (k, v) => k with { Cleaning = v })
            .May("altitude", "height above the sea", Leaves.Of<Length>(), k => k.Altitude, (k, v) => k with { Altitude = v }, new("higher up, wort boils cooler") { IsAlwaysWritten = true })
            .Need("grainTemperature", "grain before mashing", Leaves.Of<Temperature>(), k => k.GrainTemperature, (k, v) => k with { GrainTemperature = v })
            .May("instruments", "instruments", Instruments, k => k.Instruments, (k, v) => k with { Instruments = v }, Shown)
            .MayList("learned", "learned", LearnedForm.History, k => k.Learned, (k, v) => k with { Learned = v }, new("What its gyles taught and you accepted, the earliest first: from what to what, and how sure it is now.")));

    /// <summary>What racking leaves; an absent part and one without its key come to the same.</summary>
    private sealed class RackingField() : Field<Kit>("racking", "racking", FieldNotes.None)
    {
        private static readonly Form<Left> Part = new Form<Left>(new Left(KitForm.RackingLeftBehind)) { About = "What stays when the beer is racked." }
            .Else("leftBehind", "left behind", Leaves.Of<VolumeAt20C>(), r => r.Behind, (r, v) => r with { Behind = v }, KitForm.RackingLeftBehind, KitForm.RackingLeftBehind.Text, new("clear beer, above the sludge; 0.1 L when left out"));

        public override ValueForm Value => Part;

        public override bool IsOptional => true;

        internal override Kit Read(PartReader reader, Kit part)
        {
            NodeCursor at = reader.Take(Key) ?? new NodeCursor(new ObjectNode([]), Key, reader.Findings);
            return Part.TryRead(at, out Left left) ? part with { RackingLeftBehind = left.Behind } : part;
        }

        internal override void Write(Kit part, System.Collections.Immutable.ImmutableArray<KeyValuePair<string, Node>>.Builder pairs) =>
            pairs.Add(new(Key, Part.Write(new Left(part.RackingLeftBehind))));

        internal override IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts) => [(Key, SchemaParts.OrNull(Part.Schema(parts)))];

        private sealed record Left(Entered<VolumeAt20C> Behind);
    }

    /// <summary>A bare number, since volumes of gas per volume of beer have no unit; its digits are kept.</summary>
    private sealed class BareVolumes : ValueForm<Entered<Carbonation>>
    {
        private static readonly ValueForm<double> Number = Leaves.Number(0, 100);

        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Number();

        internal override bool TryRead(NodeCursor at, out Entered<Carbonation> value)
        {
            bool isRead = Number.TryRead(at, out double volumes);
            value = isRead ? new Entered<Carbonation>(Carbonation.FromVolumes(volumes), ((BareNode)at.Node).Written) : default;
            return isRead;
        }

        /// <summary>The digits as typed where they are a bare number, else the volumes, rounded to a millionth.</summary>
        internal override Node Write(Entered<Carbonation> value) =>
            decimal.TryParse(value.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
                ? new BareNode(value.Text)
                : SchemaParts.Number(Math.Round(value.Value.Volumes, 6));

        internal override Node Typed(string text) => Number.Typed(text);

        internal override ObjectNode Schema(SchemaParts parts) => Number.Schema(parts);
    }
}
