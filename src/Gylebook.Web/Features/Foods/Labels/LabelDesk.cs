using Gylebook.Forecast.Report.Labels;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Foods.Labels;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A food sheet on the desk: opened from the book or begun, changed, saved as one goes, and reckoned.</summary>
internal sealed class LabelDesk
{
    private readonly Book _book;
    private readonly TimeProvider _clock;
    private readonly ReckoningDoor _door;
    private int _turn;

    private LabelDesk(Book book, TimeProvider clock, OpenSheet<FoodRow> sheet, ReckoningDoor? door)
    {
        (_book, _clock, _door) = (book, clock, door ?? new ReckoningDoor());
        Sheet = sheet;
    }

    /// <summary>The sheet in the book.</summary>
    public OpenSheet<FoodRow> Sheet { get; }

    /// <summary>The food; null when the sheet is not there or cannot be read.</summary>
    public FoodSheet? Food { get; private set; }

    /// <summary>The text of a sheet that cannot be read.</summary>
    public string? Unread { get; private init; }

    /// <summary>What the label means and does; null until it has been reckoned.</summary>
    public FoodLabelReport? Report { get; private set; }

    /// <summary>The food as the balance takes it; null while next to nothing is known of it.</summary>
    public FoodMakeup? Makeup { get; private set; }

    /// <summary>What was found, in the sheet or by reckoning.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>Why the panel must be European, when its numbers give that away and it is not taken for one; null otherwise.</summary>
    public string? LooksEuropean { get; private set; }

    /// <summary>When it was last saved, in words; empty before.</summary>
    public string Saved { get; private set; } = "";

    /// <summary>Whose habits it borrows.</summary>
    public FoodFamily Family => FoodFamilies.Find(Food!.Family).Match ?? FoodFamilies.Of("other");

    /// <summary>A new food, in the book from its first change on.</summary>
    public static async Task<LabelDesk> BeginAsync(Book book, TimeProvider clock, PanelStyle style, PageSaves? saves = null, ReckoningDoor? door = null)
    {
        (string name, string id) = await NewFoodName.ForAsync(TimeZoneInfo.ConvertTime(clock.GetUtcNow(), clock.LocalTimeZone), book);
        return new LabelDesk(book, clock, new OpenSheet<FoodRow>(book.Foods, null, 0, saves), door)
        {
            Food = new FoodSheet { Id = id, Name = name, Family = "other", Label = new LabelPanel { Style = style } },
        };
    }

    /// <summary>A sheet of the book; without food and text when it has none of that id.</summary>
    public static async Task<LabelDesk> OpenAsync(Book book, TimeProvider clock, Guid id, PageSaves? saves = null, ReckoningDoor? door = null)
    {
        Sheet? stored = await book.Foods.FindAsync(id);
        Reading<FoodSheet>? reading = stored is null ? null : FoodFile.Read(stored.Document);
        return new LabelDesk(book, clock, new OpenSheet<FoodRow>(book.Foods, id, stored?.Revision ?? 0, saves), door)
        {
            Food = reading?.Value,
            Unread = reading is { Value: null } ? stored!.Document : null,
            Findings = reading?.Findings ?? [],
        };
    }

    /// <summary>Changes the food and saves it.</summary>
    public Task EditAsync(Func<FoodSheet, FoodSheet> change)
    {
        Food = change(Food!);
        return SaveAsync(Sheet.SaveAsync);
    }

    /// <summary>Names the food; the first name somebody gives it makes its id.</summary>
    public async Task NameAsync(string name)
    {
        string id = NewFoodName.IsSuggested(Food!) ? await NewFoodName.FreeIdAsync(name, _book) : Food!.Id;
        await EditAsync(food => food with { Name = name, Id = id });
    }

    /// <summary>Saves again what could not be saved.</summary>
    public Task SaveAgainAsync() => SaveAsync(Sheet.SaveAsync);

    /// <summary>Ends a clash in favour of what stands here.</summary>
    public Task KeepMineAsync() => SaveAsync(Sheet.OverwriteAsync);

    /// <summary>Reckons what the label means and does, off the page's own thread; of several answers the last asked for counts.</summary>
    public async Task ReckonAsync(FoodQuestion asked)
    {
        if (Food is not { } food)
        {
            return;
        }

        int turn = ++_turn;
        var amount = asked.AmountOf(Family);
        KitInUse kit = await KitInUse.FindAsync(_book);
        Finding? problem = null;
        Answer? answer = await Task.Run(() => _door.Reckon(
            () =>
            {
                MadeUpFood makeup = FoodMakeups.From(food);
                return new Answer(makeup, FoodLabelReport.Of(food.Id, food.Name, makeup, amount, asked.Into, [asked.At, asked.Beside], kit.Own));
            },
            () => $"{FoodFile.Write(food)}\n{asked}",
            out problem));
        if (turn == _turn && answer is null)
        {
            (Makeup, Report, Findings, LooksEuropean) = (null, null, [problem!], null);
        }
        else if (turn == _turn)
        {
            (MadeUpFood made, FoodLabelReport report) = answer!;
            Findings = [.. report.Findings.Select(finding => Here(finding, food.Id))];
            (Makeup, Report) = (made.Makeup, report with { Findings = Findings });
            LooksEuropean = food.Label is { Style: PanelStyle.Us } panel && PanelStyleGuess.Of(panel.AsPrinted()) is { Style: PanelStyle.Eu } guess
                ? guess.Reason
                : null;
        }
    }

    private sealed record Answer(MadeUpFood Made, FoodLabelReport Report);

    /// <summary>A finding about this food names its file as well; on this page that is plain.</summary>
    private static Finding Here(Finding finding, string id)
    {
        string file = $"foods/{id}.";
        return finding.Where.StartsWith(file, StringComparison.Ordinal) ? finding with { Where = finding.Where[file.Length..] } : finding;
    }

    private async Task SaveAsync(Func<Func<string>, Task> save)
    {
        await save(() => FoodFile.Write(Food!));
        Saved = Sheet.Says("food", _clock);
    }
}
