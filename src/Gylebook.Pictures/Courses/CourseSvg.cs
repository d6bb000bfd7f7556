using Gylebook.Pictures.Drawing;

namespace Gylebook.Pictures.Courses;

/// <summary>Draws a fermentation as SVG, in the page's colours: gravity by day, and how warm it was under it.</summary>
public static class CourseSvg
{
    /// <summary>For a page or a print.</summary>
    /// <param name="picture">What to draw.</param>
    /// <param name="id">Begins the ids in the drawing; two drawings in one page need two.</param>
    public static string Wide(CoursePicture picture, string id = "course") => new CourseInk(picture, new(760, 360, 54, 16, 1), id).Drawn();

    /// <summary>For a telephone: no letter smaller than 12 px at 360 px.</summary>
    /// <inheritdoc cref="Wide"/>
    public static string Narrow(CoursePicture picture, string id = "course-narrow") => new CourseInk(picture, new(336, 250, 46, 8, 3), id).Drawn();
}

/// <summary>The room a course is drawn in, in the drawing's units.</summary>
/// <param name="Width">All of it.</param>
/// <param name="Height">Of the gravities.</param>
/// <param name="Left">For the numbers at the left.</param>
/// <param name="Right">At the right.</param>
/// <param name="DayStep">Least days between two that are named.</param>
internal readonly record struct CourseFrame(double Width, double Height, double Left, double Right, int DayStep);

/// <summary>The lines of a course.</summary>
internal sealed class CourseInk
{
    private const double Top = 14, Warm = 64, Letters = 12.5, Layers = 5, KelvinLeast = 4;
    private const string Wort = "var(--wort, #d8a13a)", Soft = "var(--copper-soft, #ecd3c3)", Edge = "var(--edge, #8d8474)";
    private const double MostNamed = 16, HalfOfWords = 80;
    private static readonly int[] DaySteps = [1, 2, 3, 5, 7, 14];
    private static readonly double[] Steps = [0.002, 0.005, 0.01, 0.02, 0.05];

    private readonly CoursePicture _picture;
    private readonly CourseFrame _frame;
    private readonly string _id;
    private readonly MarkupPen _pen = new();
    private readonly double _low, _high, _step;

    public CourseInk(CoursePicture picture, CourseFrame frame, string id)
    {
        (_picture, _frame, _id) = (picture, frame, id);
        double[] all =
        [
            .. picture.Read.Select(mark => mark.Gravity), .. picture.Sent.SelectMany(line => line.Where(mark => !mark.IsOdd).Select(mark => mark.Gravity)),
            .. picture.Fan.SelectMany(span => new[] { span.Low, span.High }), .. picture.Planned.Select(point => point.Gravity),
        ];
        double least = all.Length > 0 ? all.Min() : 1, most = all.Length > 0 ? all.Max() : 1.05;
        _step = Steps.First(step => step == Steps[^1] || (most - least) / step <= 6);
        (_low, _high) = ((Math.Floor((least - 0.0005) / _step) * _step), (Math.Ceiling((most + 0.0005) / _step) * _step));
    }

    public string Drawn()
    {
        bool isWarm = _picture.Warmth.Count > 0;
        double height = _frame.Height + 24 + (isWarm ? Warm : 0);
        _pen.Start("svg", ("xmlns", "http://www.w3.org/2000/svg"), ("viewBox", $"0 0 {MarkupPen.Number(_frame.Width)} {MarkupPen.Number(height)}"), ("width", "100%"), ("role", "img"), ("aria-label", InWords()), ("font-family", Ink.Sans), ("font-size", Letters));
        DoneBand();
        Grid();
        Fan();
        Line(_picture.Planned.Select(point => (X(point.Day), Y(point.Gravity))), Edge, 1.5, "1.5 4");
        foreach (IReadOnlyList<CourseMark> sent in _picture.Sent)
        {
            Line(sent.Where(mark => !mark.IsOdd).Select(mark => (X(mark.Day), Y(mark.Gravity))), Ink.Text, 1, null, 0.6);
        }

        Marks();
        Today();
        DoneWords();
        if (isWarm)
        {
            Warmth();
        }

        _pen.End("svg");
        return _pen.ToString();
    }

    private string InWords()
    {
        string read = _picture.Read.Count > 0 ? $" {_picture.Shown.Gravity(_picture.Read[0].Gravity)} first, {_picture.Shown.Gravity(_picture.Read[^1].Gravity)} last read." : "";
        string goes = _picture.Fan.Count > 0 ? $" {_picture.Shown.Gravity(_picture.Fan[^1].Middle)} at the end{(_picture.Done is { } done ? $", {done.Likely}" : "")}." : "";
        return $"{_picture.Title}: gravity by day.{read}{goes} The same stands in the table.";
    }

    private double X(double day) => _frame.Left + (Math.Clamp(day, 0, _picture.Days) / _picture.Days * (_frame.Width - _frame.Left - _frame.Right));

    private double Y(double gravity) => Top + ((_high - gravity) / (_high - _low) * (_frame.Height - Top));

    private void Grid()
    {
        for (double gravity = _low; gravity < _high + (_step / 2); gravity += _step)
        {
            _pen.Element("line", ("x1", _frame.Left), ("x2", _frame.Width - _frame.Right), ("y1", Y(gravity)), ("y2", Y(gravity)), ("stroke", Ink.Rule));
            _pen.Text(_picture.Shown.Gravity(gravity).Replace(Shown.Space + "°P", "", StringComparison.Ordinal), null, ("x", _frame.Left - 7), ("y", Y(gravity) + 4), ("text-anchor", "end"), ("fill", Ink.Faint));
        }

        int step = DaySteps.First(days => days >= _frame.DayStep && (_picture.Days / days <= MostNamed || days == DaySteps[^1]));
        for (int day = 0; day <= _picture.Days; day += step)
        {
            _pen.Text(day == 0 ? "day 0" : Invariant($"{day}"), null, ("x", X(day)), ("y", _frame.Height + 17), ("text-anchor", day == 0 ? "start" : "middle"), ("fill", Ink.Faint));
        }
    }

    private void DoneBand()
    {
        if (_picture.Done is not { } done)
        {
            return;
        }

        double left = X(done.Day.Low), right = Math.Max(left + 2, X(done.Day.High)), middle = Math.Clamp((X(done.Day.Middle) - left) / (right - left), 0.02, 0.98);
        _pen.Start("defs");
        _pen.Start("linearGradient", ("id", $"{_id}-done"));
        foreach ((double at, double full) in new (double, double)[] { (0, 0), (middle, 1), (1, 0) })
        {
            _pen.Element("stop", ("offset", at), ("stop-color", Soft), ("stop-opacity", full));
        }

        _pen.End("linearGradient");
        _pen.End("defs");
        _pen.Element("rect", ("x", left), ("width", right - left), ("y", Top), ("height", _frame.Height - Top), ("fill", $"url(#{_id}-done)"));
    }

    private void DoneWords()
    {
        if (_picture.Done is not { } done)
        {
            return;
        }

        string anchor = X(done.Day.Middle) > _frame.Width * 0.8 ? "end" : "middle";
        double x = anchor == "end" ? _frame.Width - _frame.Right : Math.Max(X(done.Day.Middle), _frame.Left + HalfOfWords);
        _pen.Text(done.Likely, null, ("x", x), ("y", Top + 40), ("text-anchor", anchor), ("fill", Ink.Text), ("font-family", Ink.Serif), ("font-weight", 600), ("font-size", 15));
        _pen.Text(done.Between, null, ("x", x), ("y", Top + 58), ("text-anchor", anchor), ("fill", Ink.Faint));
    }

    /// <summary>Soft edges: fuller towards the middle.</summary>
    private void Fan()
    {
        double from = _picture.Today ?? 0;
        CourseSpan[] fan = [.. _picture.Fan.Where(span => span.Day >= from)];
        if (fan.Length < 2)
        {
            return;
        }

        for (int layer = 0; layer < Layers; layer++)
        {
            double wide = 1 - (layer / Layers);
            string path = Path(fan.Select(span => (X(span.Day), Y(span.Middle + ((span.High - span.Middle) * wide)))))
                + Path(fan.Reverse().Select(span => (X(span.Day), Y(span.Middle - ((span.Middle - span.Low) * wide))))).Replace('M', 'L') + "Z";
            _pen.Element("path", ("d", path), ("fill", Wort), ("opacity", 0.22));
        }

        Line(fan.Select(span => (X(span.Day), Y(span.Middle))), Ink.Copper, 1.6, "5 4");
        _pen.Text(_picture.Shown.Gravity(fan[^1].Middle), null, ("x", _frame.Width - _frame.Right), ("y", Y(fan[^1].High) - 6), ("text-anchor", "end"), ("fill", Ink.Text), ("font-family", Ink.Serif), ("font-weight", 600), ("font-size", 15));
    }

    private void Marks()
    {
        foreach (CourseMark mark in _picture.Read)
        {
            string ink = mark.IsOdd ? Ink.Amber : Ink.Copper;
            _pen.Element("line", ("x1", X(mark.Day)), ("x2", X(mark.Day)), ("y1", Y(mark.Gravity - mark.Doubt)), ("y2", Y(mark.Gravity + mark.Doubt)), ("stroke", ink), ("stroke-width", 1.5));
            _pen.Element("circle", ("cx", X(mark.Day)), ("cy", Y(mark.Gravity)), ("r", 4), ("fill", mark.IsOdd ? "none" : ink), ("stroke", ink), ("stroke-width", 1.5));
        }

        foreach ((double day, string words) in _picture.Notes)
        {
            _pen.Element("line", ("x1", X(day)), ("x2", X(day)), ("y1", _frame.Height - 26), ("y2", _frame.Height), ("stroke", Ink.Copper));
            bool isRight = X(day) > _frame.Width / 2;
            _pen.Text(words, null, ("x", X(day) + (isRight ? -5 : 5)), ("y", _frame.Height - 14), ("text-anchor", isRight ? "end" : "start"), ("fill", Ink.Copper));
        }
    }

    private void Today()
    {
        if (_picture.Today is not { } today || today > _picture.Days)
        {
            return;
        }

        _pen.Element("line", ("x1", X(today)), ("x2", X(today)), ("y1", Top), ("y2", _frame.Height), ("stroke", Ink.Copper));
        bool isRight = X(today) > _frame.Left + 60;
        _pen.Text("now", null, ("x", X(today) + (isRight ? -5 : 5)), ("y", Top + 8), ("text-anchor", isRight ? "end" : "start"), ("fill", Ink.Copper));
    }

    private void Warmth()
    {
        double low = _picture.Warmth.Min(point => point.Celsius), high = _picture.Warmth.Max(point => point.Celsius), middle = (low + high) / 2, half = Math.Max(KelvinLeast, high - low) / 2;
        double top = _frame.Height + 34, room = Warm - 14;
        double At(double celsius) => top + ((middle + half - celsius) / (2 * half) * room);
        foreach (double celsius in high - low < 1 ? new[] { Math.Round(middle) } : new[] { Math.Floor(low), Math.Ceiling(high) })
        {
            double y = At(Math.Clamp(celsius, middle - half, middle + half));
            _pen.Element("line", ("x1", _frame.Left), ("x2", _frame.Width - _frame.Right), ("y1", y), ("y2", y), ("stroke", Ink.Rule), ("stroke-dasharray", "3 3"));
            _pen.Text(_picture.Shown.Celsius(celsius), null, ("x", _frame.Left - 7), ("y", y + 4), ("text-anchor", "end"), ("fill", Ink.Faint));
        }

        Line(_picture.Warmth.Select(point => (X(point.Day), At(point.Celsius))), Ink.Text, 1.1, null);
    }

    private void Line(IEnumerable<(double X, double Y)> points, string ink, double width, string? dashes, double opacity = 1)
    {
        string path = Path(points);
        if (path.Contains('L', StringComparison.Ordinal))
        {
            _pen.Element("path", [("d", path), ("fill", "none"), ("stroke", ink), ("stroke-width", width), ("opacity", opacity), .. dashes is null ? ((string, object)[])[] : [("stroke-dasharray", dashes)]]);
        }
    }

    private static string Path(IEnumerable<(double X, double Y)> points) =>
        string.Concat(points.Select((point, i) => $"{(i == 0 ? 'M' : 'L')}{MarkupPen.Number(point.X)} {MarkupPen.Number(point.Y)}"));
}
