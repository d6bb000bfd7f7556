using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Learning;

/// <summary>A figure of a kit or a yeast as finished gyles propose it; nothing changes until the brewer accepts it.</summary>
/// <param name="Parameter">The parameter behind it.</param>
/// <param name="Its">Where it stands in the kit; null where no kit states it.</param>
/// <param name="Said">What the kit says of it now; null where no kit states it.</param>
/// <param name="Learned">Middle and widths on the parameter's own scale.</param>
/// <param name="Silent">Gyles whose readings taught nothing about it.</param>
public sealed record ProposedFigure(Parameter Parameter, KitParameter? Its, string? Said, KitProposal Learned, IReadOnlyList<string> Silent)
{
    /// <summary>A gyle that counts for less than this is called odd: it lies three and a half standard deviations from what the others say.</summary>
    private const double Odd = 0.5;

    /// <summary>What it is called on the command line and in the kit's file: <c>kettle.evaporation</c>; a yeast's goes by its parameter.</summary>
    public string Name => Its?.Figure.Path ?? Parameter.Id;

    /// <summary>As a brewer says it.</summary>
    public string Words => ParameterWords.Of(Parameter.Id) ?? Parameter.Id;

    /// <summary>Low, likely and high of the next gyle before these gyles, in the unit of the kit's field.</summary>
    public Quantiles Before => InField(Learned.NextBandBefore);

    /// <summary>The same with them.</summary>
    public Quantiles After => InField(Learned.NextBand);

    /// <summary>Low, likely and high of the kit's own middle: what is kept when it is accepted.</summary>
    public Quantiles Own => InField(Learned.OwnBand);

    /// <summary>Whether these gyles taught something: they left less than nine tenths of the width of its own middle.</summary>
    public bool IsTaught => Learned.Behind.Count > 0 && Learned.IsTaught;

    /// <summary>Whether the brewer can accept it: it was taught, and it stands in the kit.</summary>
    public bool CanBeAccepted => IsTaught && Its is not null;

    /// <summary>The gyles behind it: what it was in each, in the unit of the kit's field, and how much that counts.</summary>
    public IReadOnlyList<(string Gyle, double Value, double Weight)> Behind =>
        [.. Learned.Behind.Select(behind => (behind.Gyle.Gyle, InField(Learned.InUnit(behind.Gyle.Value)), behind.Weight))];

    /// <summary>A number as the kit's field writes it.</summary>
    public string Written(double number) => Its is { Figure: var figure } ? figure.Written(number, Said!) : Invariant($"{number:0.###}");

    /// <summary>In words.</summary>
    public string Sentence
    {
        get
        {
            if (!IsTaught)
            {
                return Learned.Behind.Count + Silent.Count > 1 ? $"{Words}: these gyles taught nothing about it" : $"{Words}: this gyle taught nothing about it";
            }

            string behind = string.Join(", ", Behind.Select(gyle => $"{gyle.Gyle} {Written(gyle.Value)}{Counted(gyle.Weight)}"));
            string silent = Silent.Count == 0 ? "" : $"; {string.Join(", ", Silent)} taught nothing about it";
            return $"{Words}{(Its is null ? "" : $" ({Name})")}: {Written(Own.Middle)} rather than {Said ?? Written(Before.Middle)}; the next gyle {Ends(After)}, before {Ends(Before)}; behind it {behind}{silent}";
        }
    }

    /// <summary>The line of the kit's history if it is accepted.</summary>
    /// <param name="on">The day.</param>
    /// <exception cref="InvalidOperationException">It cannot be accepted: the caller's bug.</exception>
    internal AcceptedFigure Accepted(DateOnly on) => CanBeAccepted
        ? new(Its!.Figure)
        {
            On = on, From = Said!, To = Written(Own.Middle), Low = Written(Own.Low), High = Written(Own.High), Gyles = [.. Learned.Behind.Select(behind => behind.Gyle.Gyle)],
        }
        : throw new InvalidOperationException($"{Name} cannot be accepted.");

    private static string Counted(double weight) => weight >= 1 ? "" : Invariant($" ({(weight < Odd ? "odd, " : "")}counted {100 * weight:0} %)");

    private string Ends(Quantiles band) => $"{Written(band.Low)} to {Written(band.High)}";

    private Quantiles InField(Quantiles band) => new(InField(band.Low), InField(band.Middle), InField(band.High));

    private double InField(double number) => Its?.ToFigure(number) ?? number;
}
