using AngleSharp.Dom;
using Bunit;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Files;
using Microsoft.AspNetCore.Components.Forms;

namespace Gylebook.Web.Tests.Features;

public sealed class FileIntakeTests : GylebookTestContext
{
    private int _taken;

    [Fact]
    public async Task Files_enter_each_with_what_was_found()
    {
        IRenderedComponent<FileIntake> intake = Intake();
        await ChooseAsync(intake, ("plain.json", await TextAsync()), ("letter.json", "Dear brewer"), ("other.json", """{ "format": "somebody-elses/1" }"""));
        Assert.Equal(["in", "out", "out"], Did(intake));
        Assert.Contains("1 of 3 files are in the book.", intake.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Equal(await TextAsync(), Assert.Single(await Book.Files.FindAsync("Plain Bitter", cancellation: Cancellation)).Text);
        Assert.Contains("must be one of gylebook-recipe/1", intake.FindAll(".files > li")[2].TextContent, StringComparison.Ordinal);
        Assert.Equal(1, _taken);
    }

    [Fact]
    public async Task A_name_that_is_there_is_asked_about_and_replaced_as_an_edit()
    {
        Guid id = await Book.Recipes.CreateAsync(await TextAsync(), cancellation: Cancellation);
        string other = (await TextAsync()).Replace("60 min", "75 min", StringComparison.Ordinal);
        IRenderedComponent<FileIntake> intake = Intake();
        await ChooseAsync(intake, ("plain.json", other));
        Assert.Equal(["asked"], Did(intake));
        Assert.Equal(await TextAsync(), (await Book.Drafts.FindAsync(id, Cancellation))!.Document);

        await Button(intake, "Replace it").ClickAsync(new());
        intake.WaitForAssertion(() => Assert.Equal(["in"], Did(intake)));
        Draft draft = (await Book.Drafts.FindAsync(id, Cancellation))!;
        Assert.Equal((other, "replaced by a file"), (draft.Document, draft.UndoLabel));
        Assert.Equal($"recipes/{id}", intake.Find(".files a").GetAttribute("href"));
    }

    [Fact]
    public async Task Both_are_kept_or_the_new_one_gets_a_name()
    {
        await Book.Recipes.CreateAsync(await TextAsync(), cancellation: Cancellation);
        string other = (await TextAsync()).Replace("60 min", "75 min", StringComparison.Ordinal);
        IRenderedComponent<FileIntake> intake = Intake();
        await ChooseAsync(intake, ("one.json", other), ("two.json", other));
        await Button(intake, "Keep both").ClickAsync(new());
        intake.WaitForAssertion(() => Assert.Equal(["in", "asked"], Did(intake)));
        await Button(intake, "Take it under that name").ClickAsync(new());
        Assert.Contains("Not taken: the other name", intake.FindAll(".files > li")[1].TextContent, StringComparison.Ordinal);
        await intake.Find("input[aria-label='Another name for two.json']").ChangeAsync(new() { Value = "Bitter of Mine" });
        await Button(intake, "Take it under that name").ClickAsync(new());
        intake.WaitForAssertion(() => Assert.Equal(["in", "in"], Did(intake)));
        Assert.Equal(["Bitter of Mine", "Plain Bitter", "Plain Bitter 2"], (await Book.Recipes.ListAsync(cancellation: Cancellation)).Select(recipe => recipe.Name).Order());
    }

    [Fact]
    public async Task A_file_of_an_open_standard_brings_several_things_and_takes_them_back_at_once()
    {
        IRenderedComponent<FileIntake> intake = Intake();
        await ChooseAsync(intake, ("theirs.json", await File.ReadAllTextAsync(RepositoryFile.PathOf("tests/Gylebook.Recipes.Tests/Standards/beerjson/examples/real/FirstWortHopAddition.json"), Cancellation)));
        Assert.Equal(["in"], Did(intake));
        Assert.Contains("BeerJSON 1.0: 4 of 4 things are new in the book.", intake.Find(".files > li").TextContent, StringComparison.Ordinal);
        Assert.Equal(4, intake.FindAll(".landed a").Count);
        Assert.Contains("12 US gal into the fermenter", intake.Find(".travels").TextContent, StringComparison.Ordinal);
        Assert.Single(await Book.Recipes.ListAsync(cancellation: Cancellation));

        await Button(intake, "Take all of it back, theirs.json").ClickAsync(new());
        intake.WaitForAssertion(() => Assert.Equal(["out"], Did(intake)));
        Assert.Contains("Taken back: 4 of the things it brought are in the bin.", intake.Find(".files > li").TextContent, StringComparison.Ordinal);
        Assert.Empty(await Book.Recipes.ListAsync(cancellation: Cancellation));
        Assert.Empty(await Book.Larder.ListAsync(cancellation: Cancellation));
        Assert.Equal(2, _taken);
    }

    [Fact]
    public async Task What_cannot_be_read_enters_only_when_asked_with_its_findings()
    {
        string text = (await TextAsync()).Replace("60 min", "an hour", StringComparison.Ordinal);
        IRenderedComponent<FileIntake> intake = Intake();
        await ChooseAsync(intake, ("plain.json", text));
        Assert.Equal(["out"], Did(intake));
        Assert.Contains("an hour", intake.Find(".findings").TextContent, StringComparison.Ordinal);
        Assert.Empty(await Book.Recipes.ListAsync(cancellation: Cancellation));
        await Button(intake, "Take it as it is").ClickAsync(new());
        intake.WaitForAssertion(() => Assert.Equal(["in"], Did(intake)));
        Assert.Equal(text, Assert.Single(await Book.Files.FindAsync("Plain Bitter", cancellation: Cancellation)).Text);
        Assert.NotEmpty(intake.FindAll(".findings"));
    }

    [Fact]
    public async Task A_full_disk_is_told_and_the_file_can_be_chosen_again()
    {
        // More than there is room for in the pages that the book has.
        string text = (await TextAsync()).Replace("Plain Bitter", new string('B', 150), StringComparison.Ordinal) + new string(' ', 200_000);
        IRenderedComponent<FileIntake> intake = Intake();
        Disk.IsFull = true;
        await ChooseAsync(intake, ("plain.json", text));
        Assert.Equal(["out"], Did(intake));
        Assert.Contains("Not taken:", intake.Find(".files > li").TextContent, StringComparison.Ordinal);
        Disk.IsFull = false;
        await ChooseAsync(intake, ("plain.json", text));
        Assert.Equal(["in"], Did(intake));
    }

    private IRenderedComponent<FileIntake> Intake() => Render<FileIntake>(p => p.Add(x => x.Taken, () => _taken++));

    private static async Task ChooseAsync(IRenderedComponent<FileIntake> intake, params (string Name, string Text)[] files)
    {
        IRenderedComponent<InputFile> input = intake.FindComponent<InputFile>();
        await intake.InvokeAsync(() => input.UploadFiles([.. files.Select(file => InputFileContent.CreateFromText(file.Text, file.Name))]));
        intake.WaitForAssertion(() => Assert.Equal(files.Length, Did(intake).Count()));
        intake.WaitForAssertion(() => Assert.DoesNotContain("Reading", intake.Find("[role=status]").TextContent, StringComparison.Ordinal));
    }

    private static IEnumerable<string?> Did(IRenderedComponent<FileIntake> intake) => intake.FindAll(".files > li").Select(row => row.GetAttribute("data-did"));

    private static IElement Button(IRenderedComponent<FileIntake> intake, string words) =>
        intake.FindAll("button").First(button => button.TextContent.StartsWith(words, StringComparison.Ordinal));

    private static Task<string> TextAsync() => File.ReadAllTextAsync(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), Cancellation);
}
