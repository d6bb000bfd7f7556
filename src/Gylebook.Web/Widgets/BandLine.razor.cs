using System.Globalization;
using Gylebook.Engine.Readouts;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets;

/// <summary>A band or a point drawn on a scale without colours that judge.</summary>
public sealed partial class BandLine
{
    private const double Stroke = 1.2;

    private double _left;
    private double _width;
    private double _likely;
    private bool _isOn;

    /// <summary>What those hear who do not see it: the number in words.</summary>
    [Parameter]
    [EditorRequired]
    public required string Label { get; set; }

    /// <summary>The number.</summary>
    [Parameter]
    [EditorRequired]
    public required Band Band { get; set; }

    /// <summary>Left end of the scale, in the band's unit.</summary>
    [Parameter]
    public double From { get; set; }

    /// <summary>Right end of the scale.</summary>
    [Parameter]
    [EditorRequired]
    public required double To { get; set; }

    private protected override object Look => (Label, _left, _width, _likely, _isOn);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        _isOn = double.IsFinite(Band.Likely);
        _likely = Math.Clamp(Place(Band.Likely) - (Stroke / 2), 0, 100 - Stroke);
        _left = Place(Band.Low);
        _width = Band.Kind == BandKind.Point ? 0 : Place(Band.High) - _left;
        base.OnParametersSet();
    }

    private double Place(double value) =>
        To > From && double.IsFinite(value) ? Math.Clamp((value - From) / (To - From), 0, 1) * 100 : 0;

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
