using System.Globalization;
using Gylebook.Forecast.Learning;
using Gylebook.Gyles.Tasting;
using Gylebook.Pictures;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Features.Gyles.Packaging;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Glass;

/// <summary>A gyle in the glass: what tasters say, what the numbers came to, what the kit learns, and what changes next time.</summary>
public sealed partial class GlassPage
{
    private const int FirstScales = 3;

    private readonly HashSet<string> _answered = [];
    private readonly List<ScaleRow> _scales = [.. Enumerable.Range(0, FirstScales).Select(_ => new ScaleRow())];
    private OpenGlass? _of;
    private KitLearning? _learning;
    private string _taster = "", _notes = "", _test = "triangle", _tasters = "", _right = "", _about = "", _why = "", _kept = "";
    private readonly Dictionary<string, string> _poured = [];
    private (string? Portion, string Why)? _pouredWrong;
    private string? _tasteWrong, _panelWrong, _portion;
    private bool _isLoaded, _isLearning;
    private int _loads;

    /// <summary>Which gyle.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Gyles { get; init; }

    /// <summary>Those in the glass.</summary>
    [Inject]
    public required GlassDesk Glass { get; init; }

    /// <summary>Those that are packaged.</summary>
    [Inject]
    public required PackageDesk Packages { get; init; }

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
    protected override async Task OnInitializedAsync()
    {
        await LoadAsync();
        if (_of is { Held.Count: > 0 } of && RendererInfo.IsInteractive)
        {
            _isLearning = true;
            StateHasChanged();
            _learning = await Glass.TaughtAsync(of.Gyle);
            _isLearning = false;
        }
    }

    private async Task LoadAsync()
    {
        int mine = ++_loads;
        OpenGlass? of = await Gyles.OpenAsync(Id) is { } gyle ? await GlassDesk.OpenAsync(gyle) : null;
        if (mine < _loads)
        {
            // Another tap came meanwhile: what that one brings is newer.
            return;
        }

        _of = of;
        _isLoaded = true;
        _portion ??= of?.Gyle.Division.Names[0];
        if (_of is { Tasted: [.., var last] } && _scales.TrueForAll(row => row.Name.Length == 0))
        {
            // The next taster marks the same scales.
            _scales.Clear();
            _scales.AddRange(last.Said.Marks.Select(mark => new ScaleRow { Name = mark.Scale, Low = mark.Low, High = mark.High }));
        }
    }

    private async Task TasteAsync()
    {
        TasteMark[] marks = [.. _scales.Where(row => row.Name.Trim().Length > 0).Select(row => new TasteMark(row.Name.Trim(), Or(row.Low, "none"), Or(row.High, "much"), double.Parse(row.Value, CultureInfo.InvariantCulture)))];
        _tasteWrong = _taster.Trim().Length == 0 ? "who: must be a name" : marks.Length == 0 && _notes.Trim().Length == 0 ? "say something: a mark on a scale, or a note" : null;
        if (_tasteWrong is null)
        {
            await Glass.TasteAsync(_of!.Gyle, _portion, new Tasted(_taster.Trim(), marks, _notes.Trim()));
            (_taster, _notes) = ("", "");
            await LoadAsync();
        }

        static string Or(string typed, string usual) => typed.Trim().Length > 0 ? typed.Trim() : usual;
    }

    private async Task CompareAsync()
    {
        Compared asked = new(Compared.Names[_test], Number(_tasters), Number(_right), _about.Trim().Length > 0 ? _about.Trim() : "two beers");
        _panelWrong = asked.Wrong;
        if (_panelWrong is null)
        {
            await Glass.CompareAsync(_of!.Gyle, null, asked);
            (_tasters, _right, _about) = ("", "", "");
            await LoadAsync();
        }

        static int Number(string typed) => int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : -1;
    }

    private async Task PourAsync(PortionLeft left)
    {
        string key = left.Portion ?? "", typed = _poured.GetValueOrDefault(key, "");
        bool isRead = TypedText.TryRead(typed, null, Shown.Units, out Entered<VolumeAt20C> poured, out string problem);
        _pouredWrong = !isRead ? (left.Portion, $"poured: {problem}")
            : poured.Value.Litres <= 0 || poured.Value.Litres > left.Litres + 0.05 ? (left.Portion, $"poured: {typed}; must be above 0 and at most {Shown.Litres(left.Litres)}, which should be left") : null;
        if (_pouredWrong is null)
        {
            await Packages.PouredAsync(_of!.Gyle, left.Portion, poured.Value.Litres, isEmpty: false);
            _poured[key] = "";
            await LoadAsync();
        }
    }

    private async Task EmptyAsync(PortionLeft left)
    {
        await Packages.PouredAsync(_of!.Gyle, left.Portion, left.Litres, isEmpty: true);
        await LoadAsync();
    }

    private async Task UndoAsync(Guid entry)
    {
        await Cellar.UndoAsync(_of!.Gyle, entry);
        await LoadAsync();
    }

    private async Task TakeAsync(ProposedFigure figure, bool isTaken)
    {
        if (await Glass.TakeAsync(_of!.Gyle, _learning!, figure.Name, isTaken) || !isTaken)
        {
            _answered.Add(figure.Name);
        }
    }

    private async Task NextAsync()
    {
        if (_why.Trim().Length == 0)
        {
            _kept = "Say why it changes.";
            return;
        }

        if (await Glass.NextVersionAsync(_of!.Gyle, _why) is not { } kept)
        {
            _kept = "The recipe is still what this gyle was brewed from: change it first.";
            return;
        }

        if (kept.Note?.EndsWith(_why.Trim(), StringComparison.Ordinal) != true)
        {
            _kept = Invariant($"The recipe was kept as version {kept.Number} before{(kept.Note is null ? "" : $", \"{kept.Note}\"")}; what a version says stays. Change something, and say why.");
            return;
        }

        _kept = Invariant($"Kept as version {kept.Number}.");
        _why = "";
    }

    private string Told(HeldNumber held, double value) => Shown.InUnit(held.Readout.Unit, value) ?? held.Readout.Told(value);

    private string Heard(TasteMark scale, IReadOnlyList<(string Taster, double Value)> marks) =>
        $"{scale.Scale}, from {scale.Low} to {scale.High}, of 10: {string.Join(", ", marks.Select(mark => $"{mark.Taster} {Shown.Number(mark.Value, 1)}"))}";

    /// <summary>Of which portion, and how long after it was packaged.</summary>
    private static string Aged(string? portion, TimeSpan? age) => $"{(portion is null ? "" : $", {portion}")}{(age is { } since ? $", {Ageing.Words(since)} in its package" : "")}";

    private static string At(double value) => string.Create(CultureInfo.InvariantCulture, $"{100 * value / TasteMark.Most:0.#}%");

    private sealed class ScaleRow
    {
        public string Name { get; set; } = "";

        public string Low { get; set; } = "";

        public string High { get; set; } = "";

        public string Value { get; set; } = "5";
    }
}
