using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Forms;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Tests.Forms;

/// <summary>A field is one row of its form's table: everything else follows from it.</summary>
public sealed class OneLineFieldTests
{
    private static readonly FileForm<Cask> Before = new("gylebook-cask/1", "A cask", Table());

    private static readonly FileForm<Cask> After = new(
        "gylebook-cask/1", "A cask",
        Table().May("stillage", "stillage", Leaves.Of<Temperature>(), c => c.Stillage, (c, v) => c with { Stillage = v }, new("Where it stands.", Placeholder: "12 °C")));

    private const string Bare = """{ "format": "gylebook-cask/1", "name": "Firkin", "holds": "41 L" }""";
    private const string Said = """{ "format": "gylebook-cask/1", "name": "Firkin", "holds": "41 L", "stillage": "11 °C" }""";

    [Fact]
    public void The_reader_knows_it_and_says_what_is_wrong_with_it()
    {
        Assert.Equal("key.unknown", Assert.Single(Before.Read(Said).Findings).Code);
        Assert.Equal(11, After.Read(Said).Value!.Stillage!.Value.Value.Celsius, 1e-9);
        Assert.Null(After.Read(Bare).Value!.Stillage);
        Finding wrong = Assert.Single(After.Read(Said.Replace("11 °C", "cool", StringComparison.Ordinal)).Findings);
        Assert.Equal(("quantity.wrong", "stillage"), (wrong.Code, wrong.Where));
    }

    [Fact]
    public void The_writer_puts_it_in_its_place() =>
        Assert.Equal(Said, After.Write(After.Read(Said).Value!).Replace("\n  ", " ", StringComparison.Ordinal).Replace("\n}\n", " }", StringComparison.Ordinal));

    [Fact]
    public void The_schema_has_it()
    {
        Assert.DoesNotContain("stillage", Before.Schema(), StringComparison.Ordinal);
        Assert.Contains("\"stillage\"", After.Schema(), StringComparison.Ordinal);
        Assert.Contains("Where it stands.", After.Schema(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_edit_of_it_has_words_and_two_of_them_merge()
    {
        var basis = FileDraft.Of(After, Bare);
        DraftEdit<FileDraft<Cask>> yours = basis.Put("stillage", "10 °C")!;
        Assert.Equal("stillage: nothing → 10 °C", yours.Label);
        Assert.Equal(10, yours.After.Value!.Stillage!.Value.Value.Celsius, 1e-9);

        FileDraft<Cask> theirs = basis.Put("holds", "40 L")!.After;
        FileDraft<Cask> both = DraftMerge.Of(basis, theirs, yours.After).With(_ => true);
        Assert.Equal(("10 °C", "40 L"), (both["stillage"], both["holds"]));
        Assert.True(DraftMerge.Of(basis, basis.Put("stillage", "12 °C")!.After, yours.After).HasConflicts);
    }

    [Fact]
    public void A_widget_learns_what_it_is()
    {
        Field field = After.At("stillage")!;
        Assert.Equal(("stillage", "12 °C", true), (field.Words, field.Notes.Placeholder, field.IsOptional));
        Assert.Equal("Temperature", field.Value.Accept(new QuantityName()));
        Assert.Null(Before.At("stillage"));
    }

    private static Form<Cask> Table() => new Form<Cask>(new Cask("", default, null))
        .Need("name", "name", Leaves.Name, c => c.Name, (c, v) => c with { Name = v })
        .Need("holds", "holds", Leaves.Of<VolumeAt20C>(), c => c.Holds, (c, v) => c with { Holds = v });

    private sealed record Cask(string Name, Entered<VolumeAt20C> Holds, Entered<Temperature>? Stillage);

    private sealed class QuantityName : ValueFormSorter<string>
    {
        public override string Quantity<T>() => T.Limits.Name;
    }
}
