using System.Collections.Immutable;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The fields of one ingredient line.</summary>
internal static class LineForm
{
    /// <summary>Stands for the kind of a line that does not say it; no such line leaves the reader.</summary>
    private const IngredientKind Unsaid = (IngredientKind)(-1);

    private static readonly Form<HopStorage> Storage = new Form<HopStorage>(new HopStorage(default, default, null))
        .Need("temperature", "kept at", Leaves.Of<Temperature>(), s => s.Temperature, (s, v) => s with { Temperature = v }, new() { Said = "kept at" })
        .Need("pack", "pack", Leaves.Word(FileWords.HopPacks), s => s.Pack, (s, v) => s with { Pack = v }, new("What kept the air out: nothing, a barrier with some air inside, a barrier without.") { Said = "pack" })
        .May("lost", "lost in six months", Leaves.Of<Fraction>(), s => s.Lost, (s, v) => s with { Lost = v }, new("Share of its alpha acids this cultivar loses in six months at 20 °C in the open.") { Said = "lost in six months" });

    /// <summary>A line.</summary>
    public static readonly Form<IngredientLine> Line = new Form<IngredientLine>(new IngredientLine { Kind = Unsaid, Of = "", Amount = default, At = new AdditionTime(AdditionPoint.Mash) })
    {
        About = "One ingredient: what, how much, when.",
        SchemaName = "line",
        SchemaRules = LineRules.InSchema,
    }
        .Add(new KindField())
        .May("lot", "lot", Leaves.Name, l => l.Lot, (l, v) => l with { Lot = v }, new("Which lot of a sheet in the larder; the line then names that sheet.") { Said = "lot" })
        .May("as", "name to show", Leaves.Name, l => l.As, (l, v) => l with { As = v }, new("A name to show instead.") { Said = "name" })
        .Add(new Field<IngredientLine, Entered<MaltColour>>("colour", "colour", Leaves.Of<MaltColour>(), l => Maybe(l.Colour), (l, v) => l with { Colour = v }, new("Its own colour, for malts, extracts and sugars; otherwise the table's."))
        {
            BelongsTo = Only("malts, extracts and sugars", IngredientKind.Malt, IngredientKind.Extract, IngredientKind.Sugar),
        })
        .Add(new Field<IngredientLine, Entered<Fraction>>("alpha", "alpha", Leaves.Of<Fraction>(), l => Maybe(l.Alpha), (l, v) => l with { Alpha = v }, new("Alpha acids by mass, for hops; otherwise the cultivar's usual value."))
        {
            BelongsTo = Only("hops", IngredientKind.Hop),
        })
        .Add(new Field<IngredientLine, IngredientForm>("form", "form", Leaves.Word(FileWords.AllForms), l => Maybe(l.Form), (l, v) => l with { Form = v }, new("Hops: whole or pellet. Yeast: dry, liquid or slurry."))
        {
            BelongsTo = Only("hops and yeast", IngredientKind.Hop, IngredientKind.Yeast),
            FormIn = l => FileWords.FormsOf(l.Kind) is { } words ? Leaves.Word(words) : null,
        })
        .Add(new Field<IngredientLine, Entered<Duration>>("age", "age", Leaves.Of<Duration>(), l => Maybe(l.Age), (l, v) => l with { Age = v }, new("Time since a hop's assay, or since yeast was packed or harvested; fresh when left out."))
        {
            BelongsTo = Only("hops and yeast", IngredientKind.Hop, IngredientKind.Yeast),
        })
        .Add(new Field<IngredientLine, HopStorage>("storage", "storage", Storage, l => (l.Storage is not null, l.Storage!), (l, v) => l with { Storage = v }, new("How hops were kept since their assay; open to the air at 20 °C when left out."))
        {
            BelongsTo = Only("hops", IngredientKind.Hop),
        })
        .Add(new Field<IngredientLine, CellCount>("cells", "cells", Spelled.Cells, l => Maybe(l.Cells), (l, v) => l with { Cells = v }, new("Cells that yeast held when fresh."))
        {
            BelongsTo = Only("yeast", IngredientKind.Yeast),
        })
        .Add(new Field<IngredientLine, Entered<Fraction>>("attenuation", "attenuation", Leaves.Of<Fraction>(), l => Maybe(l.Attenuation), (l, v) => l with { Attenuation = v }, new("Apparent attenuation this yeast reached last time in such a grist, 5 % to 100 %; otherwise what is usual of its type."))
        {
            BelongsTo = Only("yeast", IngredientKind.Yeast),
        })
        .Add(new Field<IngredientLine, Amount>("amount", "amount", AmountForm.WeighedOrPoured, l => (true, l.Amount), (l, v) => l with { Amount = v }, new("A mass; water, acids, foods, sugars, extracts and yeast may be measured as a volume.") { Said = "" })
        {
            IsNeeded = true,
            FormIn = l => l.Kind == Unsaid ? null : LineRules.MayBeMeasuredInAJug(l.Kind) ? AmountForm.WeighedOrPoured : AmountForm.Weighed,
        })
        .Add(new Field<IngredientLine, Entered<Fraction>>("share", "share of the grist", Leaves.Of<Fraction>(), l => Maybe(l.Share), (l, v) => l with { Share = v }, new("Share of all that is weighed into the mash, above 0 % and up to 100 %, that this malt or food holds; its amount follows. Otherwise its amount decides.") { Nothing = "let go" })
        {
            BelongsTo = Only("malts and foods", IngredientKind.Malt, IngredientKind.Food),
        })
        .Add(new Field<IngredientLine, AdditionTime>("at", "when", AdditionTimeForm.Only, l => (!IsMashedMalt(l), l.At), (l, v) => l with { At = v }, new("When it goes in. Malt is mashed unless said; everything else must say.") { Said = "when" })
        {
            NeededBy = l => l.Kind is not (Unsaid or IngredientKind.Malt),
        })
        .May("portion", "portion", Leaves.Name, l => l.Portion, (l, v) => l with { Portion = v }, new("The portion it goes into; all when left out."));

    private static Belonging<IngredientLine> Only(string who, params IngredientKind[] kinds) => new(
        line => kinds.Contains(line.Kind),
        line => line.Kind == Unsaid ? null : $"this line is {FileWords.Kinds.Word(line.Kind)}",
        who);

    private static (bool, T) Maybe<T>(T? value)
        where T : struct => (value.HasValue, value.GetValueOrDefault());

    private static bool IsMashedMalt(IngredientLine line) => line.Kind == IngredientKind.Malt && line.At.Point == AdditionPoint.Mash;

    /// <summary>What the line is of: the key says what sort of thing, its text which.</summary>
    private sealed class KindField() : Field<IngredientLine>("of", "what", new("What the line is of, by id or unambiguous name, from the larder or the tables."))
    {
        private static readonly string[] Kinds = [.. FileWords.Kinds.Words];

        public override ValueForm Value => Leaves.Name;

        public override bool IsOptional => false;

        internal override IReadOnlyList<string> Keys => Kinds;

        internal override IngredientLine Read(PartReader reader, IngredientLine part)
        {
            if (reader.ExactlyOne(Kinds) is not { } key)
            {
                return part;
            }

            Leaves.Name.TryRead(reader.Take(key)!.Value, out string of);
            return part with { Kind = FileWords.Kinds.Value(key)!.Value, Of = of };
        }

        internal override void Write(IngredientLine part, ImmutableArray<KeyValuePair<string, Node>>.Builder pairs) =>
            pairs.Add(new(FileWords.Kinds.Word(part.Kind), new TextNode(part.Of)));

        internal override IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts) =>
            Kinds.Select(kind => (kind, (Node)SchemaParts.Described(Leaves.Name.Schema(parts), $"Id or unambiguous name in the larder or the tables: {FileWords.Meant(kind)}.")));
    }
}
