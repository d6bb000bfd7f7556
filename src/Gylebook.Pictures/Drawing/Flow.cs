using Gylebook.Science.Numerics;
using static Gylebook.Pictures.Drawing.MarkupPen;

namespace Gylebook.Pictures.Drawing;

/// <summary>A stretch of ribbon between two stages, in one smooth bend.</summary>
/// <param name="FromCentre">Its middle at the top.</param>
/// <param name="FromHalf">Half its width at the top.</param>
/// <param name="Top">Where it starts.</param>
/// <param name="ToCentre">Its middle at the bottom.</param>
/// <param name="ToHalf">Half its width at the bottom.</param>
/// <param name="Bottom">Where it ends.</param>
internal sealed record Flow(double FromCentre, double FromHalf, double Top, double ToCentre, double ToHalf, double Bottom)
{
    private double Middle => (Top + Bottom) / 2;

    /// <summary>The closed shape.</summary>
    public string Outline =>
        $"{Start(-1)} {Down(-1)} L{Number(ToCentre + ToHalf)} {Number(Bottom)} C{Number(ToCentre + ToHalf)} {Number(Middle)} "
        + $"{Number(FromCentre + FromHalf)} {Number(Middle)} {Number(FromCentre + FromHalf)} {Number(Top)} Z";

    /// <summary>Its two long edges.</summary>
    public string Edges => $"{Start(-1)} {Down(-1)} {Start(1)} {Down(1)}";

    /// <summary>Its middle at a height.</summary>
    public double CentreAt(double y) => FromCentre + ((ToCentre - FromCentre) * ShareAt(y));

    /// <summary>Half its width at a height.</summary>
    public double HalfAt(double y) => FromHalf + ((ToHalf - FromHalf) * ShareAt(y));

    /// <summary>How far the bend has gone at a height: the curve's own cubic, solved by halving.</summary>
    private double ShareAt(double y)
    {
        double wanted = Math.Clamp((y - Top) / (Bottom - Top), 0, 1);
        double low = new Bracket(0, 1).Halved(t => wanted - ((1.5 * t * (1 - t)) + (t * t * t)), times: 20).Low;
        return (3 * low * low) - (2 * low * low * low);
    }

    private string Start(int side) => $"M{Number(FromCentre + (side * FromHalf))} {Number(Top)}";

    private string Down(int side) =>
        $"C{Number(FromCentre + (side * FromHalf))} {Number(Middle)} {Number(ToCentre + (side * ToHalf))} {Number(Middle)} "
        + $"{Number(ToCentre + (side * ToHalf))} {Number(Bottom)}";
}
