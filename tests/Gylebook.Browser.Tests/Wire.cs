using System.Net;
using System.Net.Sockets;

namespace Gylebook.Browser.Tests;

/// <summary>A wire between the browser and Gylebook that can be cut and mended: the program itself notices nothing but that.</summary>
internal sealed class Wire : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly IPEndPoint _far;
    private readonly List<TcpClient> _ends = [];
    private readonly CancellationTokenSource _over = new();
    private readonly Task _work;
    private bool _isCut;

    public Wire(string to)
    {
        _far = new IPEndPoint(IPAddress.Loopback, new Uri(to).Port);
        _listener.Start();
        Url = $"http://127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}";
        _work = AcceptAsync();
    }

    public string Url { get; }

    public void Cut()
    {
        lock (_ends)
        {
            _isCut = true;
            _ends.ForEach(end => end.Dispose());
            _ends.Clear();
        }
    }

    public void Mend()
    {
        lock (_ends)
        {
            _isCut = false;
        }
    }

    public async ValueTask DisposeAsync()
    {
        Cut();
        await _over.CancelAsync();
        await _work;
        _listener.Dispose();
        _over.Dispose();
    }

    private async Task AcceptAsync()
    {
        try
        {
            while (true)
            {
                TcpClient near = await _listener.AcceptTcpClientAsync(_over.Token);
                _ = CarryAsync(near);
            }
        }
        catch (Exception over) when (over is OperationCanceledException or ObjectDisposedException or InvalidOperationException or SocketException)
        {
            // The test is over.
        }
    }

    private async Task CarryAsync(TcpClient near)
    {
        TcpClient far = new();
        lock (_ends)
        {
            _ends.AddRange([near, far]);
            if (_isCut)
            {
                near.Dispose();
                far.Dispose();
                return;
            }
        }

        try
        {
            await far.ConnectAsync(_far);
            await Task.WhenAny(near.GetStream().CopyToAsync(far.GetStream()), far.GetStream().CopyToAsync(near.GetStream()));
        }
        catch (Exception cut) when (cut is SocketException or IOException or ObjectDisposedException or InvalidOperationException)
        {
            // Cut, or nobody at the other end.
        }

        near.Dispose();
        far.Dispose();
    }
}
