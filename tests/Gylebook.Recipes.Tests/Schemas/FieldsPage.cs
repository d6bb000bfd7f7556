using System.Text;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Tests.Schemas;

/// <summary>The page of the guide that lists all fields of all forms of file, as the forms know them.</summary>
internal sealed class FieldsPage
{
    private const string Opening = """
        # Fields of our files

        Every key Gylebook reads, form by form, in the order of the file. This page is made from the tables the program itself reads with, so it is never behind. [Writing files by hand](files.md) explains; this page is for looking things up.

        `lots[]` stands for each item of the list `lots`, `mash.sparge` for the key `sparge` inside of `mash`. Parts of one sort share a table. A key that is not needed may be left out, or be `null`. Text with a unit is explained under [Quantities](#quantities).
        """;

    private readonly StringBuilder _page = new(Opening + "\n");
    private readonly SortedDictionary<string, string> _quantities = new(StringComparer.Ordinal);

    private FieldsPage()
    {
    }

    /// <summary>The page, as its text.</summary>
    public static string Print(IEnumerable<FileForm> forms)
    {
        FieldsPage page = new();
        foreach (FileForm form in forms)
        {
            page.Add(form);
        }

        page.AddQuantities();
        return page._page.ToString();
    }

    private void Add(FileForm form)
    {
        Line($"\n## `{form.Format}`");
        List<(ValueForm Part, List<string> Paths)> parts = [(form.Whole, [])];
        Gather(form.Whole, "", parts);
        foreach ((ValueForm part, List<string> paths) in parts)
        {
            if (paths.Count > 0)
            {
                Line($"\n### {string.Join(", ", paths.Select(path => $"`{path}`"))}");
            }

            AddTable(part);
        }
    }

    private void AddTable(ValueForm part)
    {
        if (Resolved(part)["description"] is TextNode about)
        {
            Line($"\n{about.Text}");
        }

        Line("\n| Key | What it says | Written as | Needed |\n|---|---|---|---|");
        foreach (Field field in FieldsOf(part))
        {
            string keys = string.Join(", ", field.Keys.Select(key => $"`{key}`"));
            string needed = field.IsOptional ? "" : field.Keys.Count > 1 ? "exactly one" : "yes";
            string written = field.Key == "format" ? "the form's name, as above" : field.Value.Accept(new WrittenAs(field, _quantities));
            Line($"| {keys} | {Said(field)} | {written} | {needed} |");
        }
    }

    private void AddQuantities()
    {
        Line("\n## Quantities\n\nA number and a unit, in quotes. A comma before the decimals is read too.\n\n| What | Limits | Units |\n|---|---|---|");
        foreach ((string name, string row) in _quantities)
        {
            Line($"| {name} | {row} |");
        }
    }

    private void Line(string text) => _page.Append(text).Append('\n');

    /// <summary>All parts within one, each once, with every path at which it stands.</summary>
    private static void Gather(ValueForm whole, string path, List<(ValueForm Part, List<string> Paths)> into)
    {
        foreach (Field field in FieldsOf(whole))
        {
            (ValueForm Part, string Mark)? inner = field.Value.Accept(Inner.Only) is { } item && FieldsOf(item).Count > 0 ? (item, "[]") : FieldsOf(field.Value).Count > 0 ? (field.Value, "") : null;
            if (inner is not { } found)
            {
                continue;
            }

            string at = $"{path}{field.Key}{found.Mark}";
            if (into.Find(known => known.Part == found.Part) is { Paths: { } paths })
            {
                paths.Add(at);
            }
            else
            {
                into.Add((found.Part, [at]));
            }

            Gather(found.Part, at + ".", into);
        }
    }

    private static string Said(Field field)
    {
        string help = field.Notes.Help.TrimEnd('.');
        string words = field.Key == "format" ? "what form of file this is, and its version" : field.Words;
        bool isToldByKey = string.Equals(words, field.Key, StringComparison.OrdinalIgnoreCase) || field.Keys.Count > 1;
        return Escaped(help.Length == 0 ? Sentence(words) : isToldByKey ? Sentence(help) : $"{Sentence(words)} {Sentence(help)}");
    }

    // mL and pH stay as they are.
    private static string Sentence(string words) => $"{(char.IsUpper(words, 1) ? words[0] : char.ToUpperInvariant(words[0]))}{words[1..]}.";

    private static string Escaped(string cell) => cell.Replace("|", @"\|", StringComparison.Ordinal);

    private static IReadOnlyList<Field> FieldsOf(ValueForm value) => value.Accept(Within.Only) ?? [];

    private static ObjectNode Resolved(ValueForm value)
    {
        SchemaParts parts = new();
        ObjectNode schema = value.Schema(parts);
        return schema["$ref"] is TextNode named ? (ObjectNode)parts.All[named.Text[(named.Text.LastIndexOf('/') + 1)..]]! : schema;
    }

    private sealed class Within : ValueFormSorter<IReadOnlyList<Field>>
    {
        public static Within Only { get; } = new();

        public override IReadOnlyList<Field> Part(IReadOnlyList<Field> fields) => fields;
    }

    private sealed class Inner : ValueFormSorter<ValueForm>
    {
        public static Inner Only { get; } = new();

        public override ValueForm List(ValueForm item) => item;
    }

    /// <summary>How the value of a field is written; what quantities it can be is noted.</summary>
    private sealed class WrittenAs(Field field, SortedDictionary<string, string> quantities) : IValueFormVisitor<string>
    {
        private readonly ObjectNode _schema = Resolved(field.Value);

        public string Quantity<T>()
            where T : struct, IQuantity<T>
        {
            QuantityKind kind = UnitTable.KindOf<T>();
            IEnumerable<string> units = kind.Units.Where(unit => unit.Symbol != "1").Select(unit => $"`{unit.Symbol}`");
            quantities[kind.Noun] = $"{UnitTable.RangeOf<T>()} | {string.Join(", ", units)}{(kind.Bare is null ? "" : "; or a bare number in quotes")}";
            return kind.Noun;
        }

        public string Number() => $"a number without quotes, from {_schema["minimum"]} to {_schema["maximum"]}";

        public string Amount()
        {
            string mass = Quantity<Mass>();
            return _schema["anyOf"] is null ? mass : $"{mass} or {Quantity<VolumeAt20C>()}";
        }

        public string Choice(IReadOnlyList<string> words) => string.Join(", ", words.Select(word => $"`\"{word}\"`"));

        public string Flag() => "`true` or `false`";

        public string Text(bool isLong) => field.Notes.Placeholder is { Length: > 0 } example ? $"`\"{example}\"`"
            : _schema["examples"] is ListNode examples ? $"`{examples.Items[0]}`"
            : isLong ? "text of any length"
            : field.Value != Leaves.Name && _schema["description"] is TextNode about ? about.Text
            : "text";

        public string Day() => "`\"2026-03-01\"`";

        public string Part(IReadOnlyList<Field> fields) => "an object";

        public string List(ValueForm item) => FieldsOf(item).Count > 0 ? "a list" : "a list of names";
    }
}
