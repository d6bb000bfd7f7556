using Gylebook.Gyles;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Devices;

/// <summary>The devices of the book: added, put into a gyle, looked at, retired.</summary>
public sealed partial class DevicesPage
{
    private readonly CancellationTokenSource _left = new();
    private IReadOnlyList<DeviceNow> _devices = [];
    private IReadOnlyList<(long Id, string Words)> _portions = [];
    private (string Name, string Token)? _token;
    private string _name = "";
    private DeviceKind _kind = DeviceKind.Floating;
    private string _said = "";
    private bool _isLoaded;

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Makes tokens.</summary>
    [Inject]
    public required DeviceDesk Desk { get; init; }

    /// <summary>Knows where this page is.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _left.Cancel();
        _left.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        IAsyncEnumerable<BookChange>? changes = RendererInfo.IsInteractive ? Book.Changes.WatchAllAsync(_left.Token) : null;
        await LoadAsync();
        _ = changes?.HearAsync(change => change.Noun is BookNoun.Device or BookNoun.Gyle, _ => InvokeAsync(async () =>
        {
            await LoadAsync();
            StateHasChanged();
        }));
    }

    private async Task LoadAsync()
    {
        List<DeviceNow> now = [];
        foreach (Device device in await Book.Devices.ListAsync())
        {
            // A table of a file is not a thing that sends: it is told where its readings are.
            if (device.Kind != DeviceKind.Table)
            {
                now.Add(new DeviceNow(device, await Book.Sensors.LastAsync(device.Id)));
            }
        }

        _devices = now;
        _portions = [.. (await Book.Gyles.ListAsync())
            .Where(gyle => gyle.Status is GyleStatus.Brewing or GyleStatus.Fermenting or GyleStatus.Packaged)
            .SelectMany(gyle => gyle.Portions.Select(portion => (portion.Id, gyle.Portions.Count > 1 ? $"{gyle.Name}, {portion.Name}" : gyle.Name)))];
        _isLoaded = true;
    }

    private async Task AddAsync()
    {
        if (string.IsNullOrWhiteSpace(_name))
        {
            _said = "Say what to call it.";
            return;
        }

        try
        {
            NewToken made = await Desk.AddAsync(_name, _kind);
            (_token, _said, _name) = ((_name.Trim(), made.Token), $"{_name.Trim()} is added; its token stands above.", "");
            await LoadAsync();
        }
        catch (BookUnavailableException trouble)
        {
            _said = $"Not added: {trouble.Message}";
        }
    }

    private void ShowToken((string Name, string Token) made) => _token = made;
}
