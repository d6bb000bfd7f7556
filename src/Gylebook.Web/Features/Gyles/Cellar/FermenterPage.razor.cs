using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Portions;
using Gylebook.Pictures;
using Gylebook.Pictures.Courses;
using Gylebook.Recipes;
using Gylebook.Science.Conditioning;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>A gyle in the fermenter: what was read, where it goes, whether it is finished, and what to do.</summary>
public sealed partial class FermenterPage
{
    private readonly CancellationTokenSource _left = new();
    private OpenGyle? _gyle;
    private Fermentation? _of;
    private BrewForecast? _live;
    private CoursePicture? _picture;
    private MarkupString _wide, _narrow;
    private IReadOnlyList<CourseRow> _rows = [];
    private IReadOnlyList<string> _notes = [];
    private IReadOnlyList<(string Title, string Big, string Ends)> _figures = [];
    private IReadOnlyList<Finding> _problems = [];
    private string? _portion;
    private string _gravity = "", _temperature = "", _said = "";
    private DateTime? _when;
    private bool _isDegassed, _isForced, _isLoaded;

    /// <summary>Which gyle.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>Which portion of it; null for the first, or the whole.</summary>
    [SupplyParameterFromQuery]
    public string? Portion { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Gyles { get; init; }

    /// <summary>Those in the fermenter.</summary>
    [Inject]
    public required CellarDesk Cellar { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _left.Cancel();
        _left.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        IAsyncEnumerable<BookChange>? changes = RendererInfo.IsInteractive ? Book.Changes.WatchAsync(Id, _left.Token) : null;
        await LoadAsync();
        _ = changes?.HearAsync(_ => true, _ => InvokeAsync(async () =>
        {
            await LoadAsync();
            StateHasChanged();
        }));
    }

    private async Task LoadAsync()
    {
        OpenGyle? gyle = await Gyles.OpenAsync(Id);
        _portion = gyle?.Division.Find(_portion ?? Portion)?.Name ?? gyle?.Division.Names[0];
        if (gyle?.Pitched is not null && !RendererInfo.IsInteractive)
        {
            // It takes a second or two, and the page that comes alive works it out.
            _gyle = gyle;
            return;
        }

        Fermentation? reckoned = gyle is not null ? await Cellar.OpenAsync(gyle, _portion) : null;
        (_gyle, _of, _live, _isLoaded) = (gyle, reckoned, await Task.Run(() => gyle?.Live(reckoned)), true);
        if (_gyle is null || _of is not { } of)
        {
            return;
        }

        string? done = of.Done is { } when && of.Finished.Verdict is not (FinishedVerdict.Finished or FinishedVerdict.Stuck) ? when.Likely <= of.Now.AddHours(12) ? "done any day now" : $"done {Day(when.Likely)}" : null;
        _picture = CourseShown.Picture(of, _gyle.Line.Name, Shown, Notes(of), done, of.Done is { } span ? $"{Day(span.Low)} to {Day(span.High)}" : null);
        (_wide, _narrow) = (new(CourseSvg.Wide(_picture)), new(CourseSvg.Narrow(_picture)));
        _rows = [.. CourseShown.Rows(of, _gyle, Shown)];
        _notes = [.. Said(of)];
        _figures = _live is null ? [] : [.. Figures(_live, of)];
    }

    private async Task ChooseAsync(string? portion)
    {
        _portion = portion;
        await LoadAsync();
    }

    private async Task ReadAsync()
    {
        if (_gyle is not { } gyle)
        {
            return;
        }

        _said = "";
        _problems = await Cellar.ReadAsync(gyle, new TypedFermentReading
        {
            Gravity = _gravity, Temperature = Degrees(_temperature), IsDegassed = _isDegassed, IsForced = _isForced, Portion = _portion,
            At = _when is { } typed ? new DateTimeOffset(typed, Clock.LocalTimeZone.GetUtcOffset(typed)) : null,
        });
        if (_problems.All(problem => problem.Severity != Severity.Error))
        {
            (_gravity, _temperature, _when, _isForced, _said) = ("", "", null, false, "In the book.");
            await LoadAsync();
        }
    }

    private async Task UndoAsync(Guid entry)
    {
        _said = entry == _gyle!.Division.Entry && _gyle.Division.Kept(_gyle.Log) is { } kept ? $"Not taken back: {kept}." : "Taken back.";
        if (_said == "Taken back.")
        {
            await Cellar.UndoAsync(_gyle, entry);
        }

        await LoadAsync();
    }

    private async Task DoneAsync(CellarTask task, bool isLeftOut)
    {
        await Cellar.DoneAsync(_gyle!, task, _portion, isLeftOut);
        await LoadAsync();
    }

    /// <summary>A bare number is in the reader's degrees.</summary>
    private string Degrees(string typed) =>
        typed.Trim() is { Length: > 0 } bare && bare.All(letter => char.IsAsciiDigit(letter) || letter is '.' or ',' or '-') ? $"{bare} {(Shown.Units.Temperature == TemperatureUnit.Fahrenheit ? "°F" : "°C")}" : typed;

    private string Day(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, Clock.LocalTimeZone).ToString("ddd d MMM", CultureInfo.InvariantCulture);

    private string Local(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, Clock.LocalTimeZone).ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture);

    private string When(CellarTask task) => task.At is not { } at || at.Date < _of!.Now.Date ? task.At is null ? "Now" : $"since {Day(task.At.Value)}" : task.Until is { } until && Day(until) != Day(at) ? $"{Day(at)}, till {Day(until)}" : Day(at);

    private static List<(double, string)> Notes(Fermentation of) => of.AddedHours is { } hours && Math.Abs(of.Added) > 0.0005 ? [(hours / 24, Invariant($"{(of.Added > 0 ? "+" : "−")}{1000 * Math.Abs(of.Added):0} points go in"))] : [];

    private IEnumerable<string> Said(Fermentation of)
    {
        foreach ((Oddities flag, int count) in of.Series.Odd)
        {
            yield return Invariant($"{count} of what devices sent: {CourseShown.Odd(flag)}; not counted where a gravity cannot be trusted.");
        }

        foreach (Silence silent in of.Series.SilentNow)
        {
            yield return $"{silent.Instrument} has said nothing since {Day(silent.From)}: look at its battery and at the way to it.";
        }

        foreach (ClockShift clock in of.Series.Clocks)
        {
            yield return Invariant($"The clock of {clock.Instrument} was put right by {clock.Shift.TotalMinutes:0} minutes.");
        }

        if (of.Fan.IsLogistic)
        {
            yield return "The course did not follow the growth model, so a plain S-shaped curve was laid through what was read.";
        }
        else if (!of.Fan.IsWithinPublishedRange)
        {
            yield return "The growth model was fitted for 8 to 16 °C; outside it the band is wide, and readings tell more than it does.";
        }
    }

    private IEnumerable<(string, string, string)> Figures(BrewForecast live, Fermentation of)
    {
        foreach ((string title, Band? band, Func<double, string> told) in new (string, Band?, Func<double, string>)[]
        {
            ("Beer to package", of.Portion.Litres(live), Shown.Litres), ("Alcohol in the glass", PortionView.Band(live, of.Portion.Alcohol), Shown.Percent),
            ("Beer held in sludge", of.Portion.Name is null ? PortionView.Band(live, BeerReadouts.SludgeLitres) : null, Shown.Litres),
        })
        {
            if (band is not null)
            {
                yield return (title, told(band.Likely), $"{told(band.Low)} to {told(band.High)}");
            }
        }

        if (of.Read is [{ } last, ..] && of.Planned.Gravities[0].Middle is > 1 and var first)
        {
            yield return ("Fallen so far", Shown.Percent(100 * (first - last.Last) / (first - 1)), $"of {Shown.Percent(100 * (first - of.Fan.End.Middle) / (first - 1))} at the end");
        }
    }

    /// <summary>Gas that what is left to fall would make in a closed bottle: by stoichiometry of a disaccharide, on extract of four grams a litre for each point.</summary>
    private static string Left(Fermentation of)
    {
        double last = of.Read is [{ } still, ..] ? still.Last : of.Planned.Gravities[0].Middle;
        double points = 1000 * (last - of.Fan.End.Low);
        return points < 0.5 ? "Bottles burst where sugar is left, and nobody has seen it stand still yet."
            : Invariant($"Up to {points:0} points may be left to fall: {points * ResidualExtract.VolumesAPoint:0.0} volumes of gas on top of what you prime, and bottles burst.");
    }
}
