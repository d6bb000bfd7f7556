using System.Net;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>Where a book is opened, under which names, and when it asks for a password.</summary>
/// <param name="Urls">Where to listen, such as <see cref="WebBook.DefaultUrl"/>.</param>
/// <param name="IsLan">Whether it was opened for the local network by name.</param>
/// <param name="Hosts">Other names it goes by, without scheme and port.</param>
/// <param name="Certificate">What https shows; null without https.</param>
public sealed record SiteDoor(IReadOnlyList<string> Urls, bool IsLan, IReadOnlyList<string> Hosts, ServerCertificate? Certificate = null)
{
    private static readonly string[] ThisMachine = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>Names of what a proxy adds: a request that has one came from elsewhere, wherever the proxy runs.</summary>
    private static readonly string[] Passed = ["Forwarded", "Via", "X-Real-IP"];

    /// <summary>Whether it is meant for others than who sits at this machine, as far as the command line says.</summary>
    public bool IsForOthers => IsLan || Hosts.Count > 0 || !Urls.All(ListenAddress.IsLoopback);

    /// <summary>Whether a request has to come with a password: by how the book was opened, never by the address it seems to come from.</summary>
    /// <param name="request">The request.</param>
    /// <param name="isForThisMachineOnly">Whether the site really listens on this machine alone.</param>
    public bool Asks(HttpRequest request, bool isForThisMachineOnly)
    {
        ArgumentNullException.ThrowIfNull(request);
        return IsForOthers || !isForThisMachineOnly || IsPassedOn(request);
    }

    /// <summary>Whether the book goes by the name that a request asks for. Another site's page must not reach it through a name it made up.</summary>
    /// <param name="request">The request; it has a host.</param>
    /// <param name="isForThisMachineOnly">Whether the site really listens on this machine alone.</param>
    public bool Knows(HttpRequest request, bool isForThisMachineOnly)
    {
        ArgumentNullException.ThrowIfNull(request);
        string host = request.Host.Host;
        return Is(ThisMachine, host) || Is(Hosts, host)
            || (!(isForThisMachineOnly && !IsLan) && (Is(MachineNames.Names, host) || IsWhereItCameIn(host, request.HttpContext.Connection.LocalIpAddress)));
    }

    private static bool Is(IReadOnlyList<string> names, string host) => names.Contains(host, StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a name is the very address of this machine that was called.</summary>
    private static bool IsWhereItCameIn(string host, IPAddress? here) =>
        here is not null && IPAddress.TryParse(host.Trim('[', ']'), out IPAddress? asked) && Plain(asked).Equals(Plain(here));

    /// <summary>Without the card it is reached through, which no Host header names.</summary>
    private static IPAddress Plain(IPAddress address) => address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : new IPAddress(address.GetAddressBytes());

    private static bool IsPassedOn(HttpRequest request) =>
        request.Headers.Keys.Any(name => Is(Passed, name) || name.StartsWith("X-Forwarded-", StringComparison.OrdinalIgnoreCase));
}
