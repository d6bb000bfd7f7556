using System.Collections.Immutable;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange;

/// <summary>The fields of a water plan, in the order of its file.</summary>
internal static class WaterForm
{
    /// <summary>The ions by the words of our files.</summary>
    public static readonly WordTable<Ion> IonWords = new(
        (Ion.Calcium, "calcium"), (Ion.Magnesium, "magnesium"), (Ion.Sodium, "sodium"), (Ion.Potassium, "potassium"),
        (Ion.Bicarbonate, "bicarbonate"), (Ion.Sulphate, "sulphate"), (Ion.Chloride, "chloride"), (Ion.Nitrate, "nitrate"));

    private static readonly WordTable<LiquorPlace> Places = new(
        (LiquorPlace.Liquor, "liquor"), (LiquorPlace.Mash, "mash"), (LiquorPlace.Sparge, "sparge"), (LiquorPlace.Kettle, "kettle"),
        (LiquorPlace.Package, "package"));

    private static readonly Form<ReportSheet> Report = new Form<ReportSheet>(new ReportSheet()) { About = "What the laboratory printed, at most 5000 mg/L of any ion; what is left out is not stated, and counts as none.", Stays = true }
        .May("calcium", "calcium", HardnessForm.OfIon(Ion.Calcium), r => r.Calcium, (r, v) => r with { Calcium = v })
        .May("magnesium", "magnesium", HardnessForm.OfIon(Ion.Magnesium), r => r.Magnesium, (r, v) => r with { Magnesium = v })
        .May("hardness", "hardness", HardnessForm.Hardness, r => r.Hardness, (r, v) => r with { Hardness = v })
        .May("alkalinity", "alkalinity", HardnessForm.Alkalinity, r => r.Alkalinity, (r, v) => r with { Alkalinity = v })
        .May("bicarbonate", "bicarbonate", WaterLimits.Ion, r => r.Bicarbonate, (r, v) => r with { Bicarbonate = v })
        .May("carbonate", "carbonate", WaterLimits.Ion, r => r.Carbonate, (r, v) => r with { Carbonate = v })
        .May("sulphate", "sulphate", WaterLimits.Ion, r => r.Sulphate, (r, v) => r with { Sulphate = v })
        .May("sulphateSulphur", "sulphate as sulphur", WaterLimits.Ion, r => r.SulphateSulphur, (r, v) => r with { SulphateSulphur = v }, new("Printed as SO4-S: the sulphur alone. Not beside sulphate."))
        .May("chloride", "chloride", WaterLimits.Ion, r => r.Chloride, (r, v) => r with { Chloride = v })
        .May("nitrate", "nitrate", WaterLimits.Ion, r => r.Nitrate, (r, v) => r with { Nitrate = v })
        .May("nitrateNitrogen", "nitrate as nitrogen", WaterLimits.Ion, r => r.NitrateNitrogen, (r, v) => r with { NitrateNitrogen = v }, new("Printed as NO3-N: the nitrogen alone. Not beside nitrate."))
        .May("sodium", "sodium", WaterLimits.Ion, r => r.Sodium, (r, v) => r with { Sodium = v })
        .May("potassium", "potassium", WaterLimits.Ion, r => r.Potassium, (r, v) => r with { Potassium = v })
        .May("ph", "pH", Leaves.Number(4.5, 11), r => r.Ph, (r, v) => r with { Ph = v }, new("pH at room temperature."))
        .May("conductivity", "conductivity", LiquorSpelled.Conductivity, r => r.Conductivity, (r, v) => r with { Conductivity = v }, new("At 25 °C."))
        .Agree((report, at) =>
        {
            Twice(at, report.Sulphate is not null && report.SulphateSulphur is not null, "sulphateSulphur", "sulphate");
            Twice(at, report.Nitrate is not null && report.NitrateNitrogen is not null, "nitrateNitrogen", "nitrate");
        });

    private static readonly Form<WaterSourceSheet> Source = new Form<WaterSourceSheet>(new WaterSourceSheet("", null, null, null, null, null)) { About = "A water: a report, or distilled." }
        .Need("name", "name", Leaves.Name, s => s.Name, (s, v) => s with { Name = v })
        .May("share", "share", Leaves.Of<Fraction>(), s => s.Share, (s, v) => s with { Share = v }, new("Of the liquor; all shares together are 100 %."))
        .May("distilled", "distilled", Leaves.Flag, s => s.IsDistilled, (s, v) => s with { IsDistilled = v }, new("Water without anything in it, distilled or by reverse osmosis; it has no report."))
        .May("boiled", "boiled", Leaves.Flag, s => s.IsBoiled, (s, v) => s with { IsBoiled = v }, new("Boiled, left to settle and drawn off its chalk first."))
        .May("boiledTo", "boiled to", HardnessForm.Alkalinity, s => s.BoiledTo, (s, v) => s with { BoiledTo = v }, new("Alkalinity measured after boiling."))
        .May("report", "report", Report, s => s.Report, (s, v) => s with { Report = v })
        .Agree((source, at) =>
        {
            bool isDistilled = source.IsDistilled == true;
            if (isDistilled == source.Report is not null)
            {
                at.Error("source.kind", "", isDistilled
                    ? "distilled water has no report; keep one of the two"
                    : "needs a report, or \"distilled\": true");
            }

            if (source.BoiledTo is not null && source.IsBoiled != true)
            {
                at.Error("key.misplaced", "boiledTo", "only boiled water has \"boiledTo\"; add \"boiled\": true");
            }
        });

    private static readonly Form<IonWish> Target = new Form<IonWish>(new IonWish(default, default, null)) { About = "An ion wanted." }
        .Need("ion", "ion", Leaves.Word(IonWords), t => t.Ion, (t, v) => t with { Ion = v })
        .Need("amount", "amount", WaterLimits.Ion, t => t.Amount, (t, v) => t with { Amount = v }, new("At most 5000 mg/L. It overrules the balance."))
        .May("weight", "weight", Leaves.Number(0, 1000), t => t.Weight, (t, v) => t with { Weight = v }, new("How much a miss matters beside the others; 1 when left out."));

    private static readonly Form<SaltSheet> Salt = new Form<SaltSheet>(new SaltSheet("", null, null, null, null, null)) { About = "A salt at hand." }
        .Need("salt", "salt", Leaves.Name, s => s.Salt, (s, v) => s with { Salt = v }, new("Its id or name: gypsum, calcium chloride."))
        .May("into", "into", Leaves.Word(Places), s => s.Into, (s, v) => s with { Into = v }, new("Where it goes; liquor when left out. No alkaline salt goes into the package."))
        .May("least", "at least", Leaves.Of<Concentration>(), s => s.Least, (s, v) => s with { Least = v }, new("Least of it in the liquor it goes into."))
        .May("most", "at most", Leaves.Of<Concentration>(), s => s.Most, (s, v) => s with { Most = v }, new("Most of it in the liquor it goes into."))
        .May("price", "price", Leaves.Of<Fraction>(), s => s.Price, (s, v) => s with { Price = v }, new("No money: how unwelcome it is. 1 g/L of it counts as much as missing one ion by this share; 3.16 % when left out."))
        .May("assay", "assay", Leaves.Of<Fraction>(), s => s.Assay, (s, v) => s with { Assay = v }, new("Share of CaCl2 in calcium chloride, as its label says; water is the rest."));

    private static readonly Form<AcidSheet> Acid = new Form<AcidSheet>(new AcidSheet("", null, null)) { About = "An acid at hand, with its strength." }
        .Need("acid", "acid", Leaves.Name, a => a.Acid, (a, v) => a with { Acid = v }, new("With its strength by mass, or by volume: \"lactic acid 88 %\", \"phosphoric 10 % w/v\"."))
        .May("most", "at most", AmountForm.WeighedOrPoured, a => a.Most, (a, v) => a with { Most = v }, new("mL at most; grams of a powder."))
        .May("density", "density", LiquorSpelled.Density, a => a.Density, (a, v) => a with { Density = v }, new("Of the bottle at 20 °C, for a strength by mass that our tables have not; 0.99 to 2 kg/L."));

    private static readonly FieldNotes Sample = new("How warm the sample was, 15 to 80 °C: no pH without its temperature.");

    private static readonly Form<MeterSheet> WortReading = new Form<MeterSheet>(new MeterSheet(0, default, null)) { About = "What a meter read of the wort before acid; the mash's pH is taken when left out." }
        .Need("ph", "pH", Leaves.Number(4, 7.5), m => m.Ph, (m, v) => m with { Ph = v }, new("As the meter showed it."))
        .Need("sample", "sample", WaterLimits.Sample, m => m.Sample, (m, v) => m with { Sample = v }, Sample);

    private static readonly Form<MeterSheet> MashReading = new Form<MeterSheet>(new MeterSheet(0, default, null)) { About = "What a meter read of the mash with this plan's salts and acid in it." }
        .Need("ph", "pH", Leaves.Number(4, 7.5), m => m.Ph, (m, v) => m with { Ph = v }, new("As the meter showed it."))
        .Need("sample", "sample", WaterLimits.Sample, m => m.Sample, (m, v) => m with { Sample = v }, Sample)
        .May("acid", "acid in it", AmountForm.WeighedOrPoured, m => m.Acid, (m, v) => m with { Acid = v }, new("mL (grams of a powder) of the first acid that was in by then; what the plan puts in when left out."));

    private static readonly Form<TitratedSheet> Malt = new Form<TitratedSheet>(new TitratedSheet("", 0, 0)) { About = "A malt titrated or learned." }
        .Need("malt", "malt", Leaves.Name, m => m.Malt, (m, v) => m with { Malt = v }, new("Its id or name."))
        .Need("distilledPh", "pH in distilled water", TitrationForm.Ph, m => m.DistilledPh, (m, v) => m with { DistilledPh = v }, TitrationForm.PhNotes)
        .Need("buffer", "buffer", TitrationForm.Buffer, m => m.Buffer, (m, v) => m with { Buffer = v }, TitrationForm.BufferNotes);

    private static readonly Form<GristSheet> Grist = new Form<GristSheet>(new GristSheet(false, "", default, null, null, null))
    {
        About = "Malt or food in the mash.",
        SchemaRules = [("oneOf", new ListNode([Node.Object(("required", new ListNode([new TextNode("malt")]))), Node.Object(("required", new ListNode([new TextNode("food")])))]))],
    }
        .Add(new GristKind())
        .Need("amount", "amount", Leaves.Of<Mass>(), g => g.Amount, (g, v) => g with { Amount = v })
        .May("colour", "colour", Leaves.Of<MaltColour>(), g => g.Colour, (g, v) => g with { Colour = v })
        .May("distilledPh", "pH in distilled water", TitrationForm.Ph, g => g.DistilledPh, (g, v) => g with { DistilledPh = v }, new(TitrationForm.PhNotes.Help))
        .May("buffer", "buffer", TitrationForm.Buffer, g => g.Buffer, (g, v) => g with { Buffer = v }, new(TitrationForm.BufferNotes.Help))
        .Agree((line, at) =>
        {
            if (line.DistilledPh is null != line.Buffer is null)
            {
                at.Error("titration.half", "", "a titration needs both distilledPh and buffer, mEq/(kg·pH)");
            }
        });

    /// <summary>The whole.</summary>
    public static readonly FileForm<WaterSheet> File = new(
        WaterFile.Format,
        "A Gylebook water plan",
        new Form<WaterSheet>(new WaterSheet { Name = "", Sources = [] }) { About = "Waters, wishes, salts and acids." }
            .Need("name", "name", Leaves.Name, w => w.Name, (w, v) => w with { Name = v })
            .May("notes", "notes", Leaves.Prose, w => w.Notes, (w, v) => w with { Notes = v })
            .Need("sources", "waters", new ListForm<WaterSourceSheet>(Source) { NeedsOne = true, ItemSaid = "water" }, w => w.Sources, (w, v) => w with { Sources = v }, new("The waters at hand, one or several."))
            .May("recipe", "recipe", Leaves.Name, w => w.Recipe, (w, v) => w with { Recipe = v }, new("A recipe file beside the plan, for grist and litres."))
            .May("strike", "strike liquor", Leaves.Of<VolumeAt20C>(), w => w.Strike, (w, v) => w with { Strike = v }, new("What the mash starts in, when no recipe says so."))
            .May("sparge", "sparge liquor", Leaves.Of<VolumeAt20C>(), w => w.Sparge, (w, v) => w with { Sparge = v }, new("What rinses the grain, when no recipe says so."))
            .May("package", "packaged", Leaves.Of<VolumeAt20C>(), w => w.Package, (w, v) => w with { Package = v }, new("Litres packaged, for salts into the package."))
            .May("balance", "balance", Leaves.Name, w => w.Balance, (w, v) => w with { Balance = v }, new("A balance by what it is for: for lagers and wheat beers, for any beer, for hop-forward ales, for malt-forward ales, for stouts and porters, for salted sour beers."))
            .MayList("targets", "ions wanted", new ListForm<IonWish>(Target) { MatchedBy = ["ion"], ItemSaid = "ion wanted" }, w => w.Targets, (w, v) => w with { Targets = v }, new("One by one; a line overrules the balance."))
            .MayList("salts", "salts", new ListForm<SaltSheet>(Salt) { MatchedBy = ["salt"], ItemSaid = "salt" }, w => w.Salts, (w, v) => w with { Salts = v }, new("What is at hand."))
            .MayList("acids", "acids", new ListForm<AcidSheet>(Acid) { MatchedBy = ["acid"], ItemSaid = "acid" }, w => w.Acids, (w, v) => w with { Acids = v }, new("What is at hand; the first is used. Add acid to water, never water to acid, with gloves and glasses on."))
            .May("dilution", "distilled at most", Leaves.Of<Fraction>(), w => w.Dilution, (w, v) => w with { Dilution = v }, new("Largest share that distilled water may replace."))
            .May("mashPh", "mash pH", Leaves.Number(WaterLimits.LowestMashPh, WaterLimits.HighestMashPh), w => w.MashPh, (w, v) => w with { MashPh = v }, new("pH wanted of the mash, sample cooled to 20 °C."))
            .May("spargePh", "sparge pH", Leaves.Number(4.5, 8), w => w.SpargePh, (w, v) => w with { SpargePh = v }, new("pH wanted of the sparge liquor at 20 °C."))
            .May("wortPh", "wort pH", Leaves.Number(4, 6), w => w.WortPh, (w, v) => w with { WortPh = v }, new("pH wanted of the wort in the kettle, sample cooled to 20 °C."))
            .May("mashReading", "mash, as read", MashReading, w => w.MashReading, (w, v) => w with { MashReading = v })
            .May("wortReading", "wort, as read", WortReading, w => w.WortReading, (w, v) => w with { WortReading = v })
            .MayList("malts", "titrated malts", new ListForm<TitratedSheet>(Malt) { MatchedBy = ["malt"], ItemSaid = "titrated malt" }, w => w.Malts, (w, v) => w with { Malts = v }, new("They overrule the table."))
            .MayList("grist", "grist", new ListForm<GristSheet>(Grist) { MatchedBy = ["malt", "food"] }, w => w.Grist, (w, v) => w with { Grist = v }, new("What is mashed, when no recipe says so.")));

    private static void Twice(PartCursor at, bool isTwice, string key, string with)
    {
        if (isTwice)
        {
            at.Error("report.twice", key, $"the report says {with} too; keep one of the two");
        }
    }

    /// <summary>What a line of grist is of.</summary>
    private sealed class GristKind() : Field<GristSheet>("of", "what", new("What is mashed, by id or unambiguous name."))
    {
        public override ValueForm Value => Leaves.Name;

        public override bool IsOptional => false;

        internal override IReadOnlyList<string> Keys => ["malt", "food"];

        internal override GristSheet Read(PartReader reader, GristSheet part)
        {
            if (reader.ExactlyOne(Keys) is not { } key)
            {
                return part;
            }

            Leaves.Name.TryRead(reader.Take(key)!.Value, out string of);
            return part with { IsFood = key == "food", Of = of };
        }

        internal override void Write(GristSheet part, ImmutableArray<KeyValuePair<string, Node>>.Builder pairs) =>
            pairs.Add(new(part.IsFood ? "food" : "malt", new TextNode(part.Of)));

        internal override IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts) =>
            Keys.Select(key => (key, (Node)SchemaParts.OrNull(Leaves.Name.Schema(parts))));
    }
}
