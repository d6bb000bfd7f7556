using System.Globalization;
using Gylebook.Gyles.Portions;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>Shares a beer out over vessels.</summary>
public sealed partial class DivideForm
{
    private readonly List<Row> _rows = [new() { Share = "50" }, new() { Share = "50" }];
    private string? _wrong;

    /// <summary>The gyle.</summary>
    [Parameter]
    [EditorRequired]
    public required OpenGyle Gyle { get; set; }

    /// <summary>It is divided.</summary>
    [Parameter]
    public EventCallback Divided { get; set; }

    /// <summary>Gyles in the fermenter.</summary>
    [Inject]
    public required CellarDesk Cellar { get; init; }

    private async Task DivideAsync()
    {
        List<DividedPortion> wanted = [];
        foreach (Row row in _rows.Where(row => row.Name.Trim().Length > 0 || row.Share.Trim().Length > 0))
        {
            if (!double.TryParse(row.Share.Replace(',', '.').TrimEnd('%', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent))
            {
                _wrong = $"share of {(row.Name.Length > 0 ? row.Name : "a portion")}: \"{row.Share}\"; must be a number above 0 and below 100";
                return;
            }

            wanted.Add(new DividedPortion(row.Name.Trim(), percent / 100));
        }

        _wrong = await Cellar.DivideAsync(Gyle, wanted);
        if (_wrong is null)
        {
            await Divided.InvokeAsync();
        }
    }

    private sealed class Row
    {
        public string Name { get; set; } = "";

        public string Share { get; set; } = "";
    }
}
