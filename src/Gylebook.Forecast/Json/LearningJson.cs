using Gylebook.Forecast.Learning;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Json;

/// <summary>What gyles teach of a kit, as <c>gylebook-learned/1</c>.</summary>
public static class LearningJson
{
    /// <summary>What its <c>format</c> key says.</summary>
    public const string Format = "gylebook-learned/1";

    private const int Decimals = 5;

    /// <summary>The whole text.</summary>
    /// <param name="learning">What was learned.</param>
    /// <param name="accepted">Names of the figures that were accepted.</param>
    /// <param name="file">Where the kit was written to; null where it was not.</param>
    public static string Write(KitLearning learning, IReadOnlyCollection<string> accepted, string? file) => JsonPen.Write(pen =>
    {
        pen.Text("format", Format);
        pen.Text("kit", learning.Kit.Name);
        pen.Texts("gyles", learning.Gyles);
        pen.List("figures", learning.Figures, figure => WriteFigure(pen, figure, accepted.Contains(figure.Name)));
        pen.List("inseparable", learning.Pairs, tied =>
        {
            pen.Text("one", tied.Pair.One);
            pen.Text("other", tied.Pair.Other);
            pen.Number("correlation", tied.Pair.Correlation, 3);
            pen.Text("partedBy", tied.Pair.Parting);
            pen.Texts("gyles", tied.Gyles);
        });
        pen.List("findings", learning.Findings, finding => ForecastJson.WriteFinding(pen, finding));
        pen.Text("file", file);
    });

    private static void WriteFigure(JsonPen pen, ProposedFigure figure, bool isAccepted)
    {
        pen.Text("name", figure.Name);
        pen.Text("parameter", figure.Parameter.Id);
        pen.Text("words", figure.Words);
        pen.Text("unit", figure.Its is null ? figure.Parameter.Unit : figure.Its.Figure.Unit);
        pen.Text("said", figure.Said);
        pen.Text("proposed", figure.IsTaught ? figure.Written(figure.Own.Middle) : null);
        pen.Flag("taught", figure.IsTaught);
        pen.Flag("accepted", isAccepted);
        pen.Number("narrower", 1 - (figure.Learned.Deviation / figure.Learned.DeviationBefore), 3);
        WriteEnds(pen, "before", figure.Before);
        WriteEnds(pen, "after", figure.After);
        WriteEnds(pen, "own", figure.Own);
        pen.List("behind", figure.Behind, behind =>
        {
            pen.Text("gyle", behind.Gyle);
            pen.Number("value", behind.Value, Decimals);
            pen.Number("weight", behind.Weight, 3);
        });
        pen.Texts("silent", figure.Silent);
    }

    private static void WriteEnds(JsonPen pen, string name, Quantiles band) => pen.Block(name, () =>
    {
        pen.Number("low", band.Low, Decimals);
        pen.Number("likely", band.Middle, Decimals);
        pen.Number("high", band.High, Decimals);
    });
}
