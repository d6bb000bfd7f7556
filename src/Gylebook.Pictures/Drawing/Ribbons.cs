namespace Gylebook.Pictures.Drawing;

/// <summary>How wide the ribbons are, and where they run: litres at 20 °C, all to the scale of the widest stage.</summary>
internal sealed class Ribbons
{
    private const double WidestGap = 10;

    private readonly RunFrame _frame;
    private readonly double _least;
    private readonly Dictionary<string, double> _centres = [];

    public Ribbons(RunPicture picture, RunFrame frame, double least)
    {
        _frame = frame;
        _least = least;
        int count = picture.Branches.Count;
        double[] widest = [.. picture.Branches.Select(b => b.Steps.Select(s => Sound(s.Litres.Likely)).DefaultIfEmpty(0).Max())];
        double gap = count > 1 ? Math.Min(WidestGap, frame.RibbonRoom / 3 / (count - 1)) : 0;
        double gaps = gap * Math.Max(0, count - 1);
        double trunk = Ratio(frame.RibbonRoom, Sound(picture.WidestLitres));
        PerLitre = count == 0 ? trunk : Math.Min(trunk, Ratio(frame.RibbonRoom - gaps, widest.Sum()));
        double left = frame.Centre - (((widest.Sum() * PerLitre) + gaps) / 2);
        for (int i = 0; i < count; i++)
        {
            double width = widest[i] * PerLitre;
            _centres[picture.Branches[i].Name] = left + (width / 2);
            left += width + gap;
        }
    }

    /// <summary>Width of a litre.</summary>
    public double PerLitre { get; }

    /// <summary>The one ribbon before a parting.</summary>
    public (double Centre, double Width) Trunk(RunStep step) => (_frame.Centre, WidthOf(step));

    /// <summary>A branch's own ribbon.</summary>
    public (double Centre, double Width) Branch(RunStep step) => (_centres[step.Portion], WidthOf(step));

    /// <summary>How wide so many litres are.</summary>
    public double WidthOf(double litres) => Math.Clamp(Sound(litres) * PerLitre, _least, _frame.RibbonRoom);

    private double WidthOf(RunStep step) => WidthOf(step.Litres.Likely);

    /// <summary>A number that can be drawn: neither negative nor endless.</summary>
    private static double Sound(double litres) => double.IsFinite(litres) ? Math.Max(0, litres) : 0;

    private static double Ratio(double room, double litres) => litres > 0 ? room / litres : 0;
}
