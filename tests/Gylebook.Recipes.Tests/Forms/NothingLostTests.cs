using CsCheck;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Forms;

/// <summary>Whatever a file says, a draft of it keeps; and merging does not care who came first.</summary>
public sealed class NothingLostTests
{
    private static readonly string[] Typed = ["", "5", "5 L", "-3 kg", "about so", "é \" \\ \u2028", "<b>", "1,5 %", "true", "66 °C", "[", "null"];

    /// <summary>Samples of every noun.</summary>
    public static TheoryData<string> Files() => [.. Samples.Files("samples", "recipes").Concat(Samples.Files("samples", "kits")).Concat(Samples.Files("samples", "foods")).Concat(Samples.Files("samples", "water"))];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_draft_gives_back_the_very_text_it_was_made_of(string path)
    {
        string text = Samples.Text(path);
        Assert.Equal(text, DraftOf(text).Text);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void What_is_typed_into_any_field_is_kept_and_reads_back(string path)
    {
        FileDraft draft = DraftOf(Samples.Text(path));
        string[] fields = [.. Paths(draft)];
        Gen.Select(Gen.Int[0, fields.Length - 1], Gen.OneOf(Typed)).Sample(
            (field, typed) =>
            {
                if (draft.Put(fields[field], typed) is not { } edit)
                {
                    return;
                }

                FileDraft again = DraftOf(edit.After.Text);
                Assert.True(again.Says(edit.After));
                Assert.Equal(edit.After.Text, again.Text);
                Assert.Equal(edit.After.Findings, again.Findings);
                Assert.All(fields.Where(other => !Overlap(other, fields[field])), other => Assert.Equal(draft[other], edit.After[other]));
            },
            iter: 60,
            seed: "0N0XIzNsQ0O2",
            threads: 1);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Merging_is_the_same_from_both_sides_where_the_fields_differ(string path)
    {
        FileDraft basis = DraftOf(Samples.Text(path));
        string[] fields = [.. Paths(basis)];
        Gen.Select(Gen.Int[0, fields.Length - 1], Gen.Int[0, fields.Length - 1], Gen.OneOf(Typed), Gen.OneOf(Typed)).Sample(
            (one, other, first, second) =>
            {
                if (Overlap(fields[one], fields[other]) || basis.Put(fields[one], first)?.After is not { } mine || basis.Put(fields[other], second)?.After is not { } theirs)
                {
                    return;
                }

                DraftMerge<FileDraft> merge = DraftMerge.Of(basis, theirs, mine);
                if (!merge.HasConflicts)
                {
                    Assert.True(merge.With(_ => true).Says(DraftMerge.Of(basis, mine, theirs).With(_ => true)));
                }
            },
            iter: 60,
            seed: "0N0XIzNsQ0O2",
            threads: 1);
    }

    private static FileDraft DraftOf(string text) => text switch
    {
        _ when text.Contains(RecipeFile.Format, StringComparison.Ordinal) => RecipeDraft.Of(text),
        _ when text.Contains(WaterFile.Format, StringComparison.Ordinal) => WaterDraft.Of(text),
        _ when text.Contains(KitFile.Format, StringComparison.Ordinal) => FileDraft.Of(KitFile.Form, text),
        _ => FileDraft.Of(FoodFile.Form, text),
    };

    /// <summary>The paths of all that a draft says, and of what it could say besides, outside lists.</summary>
    private static IEnumerable<string> Paths(FileDraft draft) => draft.Form.Whole.Accept(new Leafs(draft, ""))!.Where(path => path is not ("format" or "name"));

    private static bool Overlap(string one, string other) => Root(one) == Root(other);

    // An edit within an item may make it another item; an emptied part goes as a whole.
    private static string Root(string path) => path.IndexOfAny(['.', '[']) is >= 0 and int end ? path[..end] : path;

    private sealed class Leafs(FileDraft draft, string path) : ValueFormSorter<IEnumerable<string>>
    {
        protected override IEnumerable<string> Other => [path];

        public override IEnumerable<string> Part(IReadOnlyList<Field> fields) => path.Length > 0 && !draft.Has(path)
            ? []
            : fields.SelectMany(field => field.Keys.SelectMany(key => (path.Length == 0 ? key : $"{path}.{key}") is var inner && (field.Keys.Count == 1 || draft.Has(inner))
                ? field.Value.Accept(new Leafs(draft, inner))!
                : []));

        public override IEnumerable<string> List(ValueForm item) =>
            Enumerable.Range(0, draft.CountOf(path)).SelectMany(i => item.Accept(new Leafs(draft, Invariant($"{path}[{i}]")))!);
    }
}
