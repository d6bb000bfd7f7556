using System.Net;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting;

/// <summary>Where a site listens, and who can reach it there.</summary>
public static class ListenAddress
{
    private const string This = "localhost";

    private static readonly string[] Every = ["*", "+"];

    /// <summary>What is wrong with an address to listen on; null when it means what it says.</summary>
    /// <remarks>The server takes any name but <c>localhost</c> for "every interface", a mistyped one too.</remarks>
    /// <param name="url">Such as <c>http://localhost:5080</c>.</param>
    public static string? Fault(string url)
    {
        if (!url.StartsWith("http://", StringComparison.Ordinal) && !IsSecure(url))
        {
            return $"{url}: an address is written like http://localhost:5080 or https://localhost:5443.";
        }

        string? host = Host(url);
        return host is null ? $"{url}: this is no address; one is written like http://localhost:5080."
            : IsThis(host) || Every.Contains(host) || IPAddress.TryParse(host, out _) ? null
            : $"{url}: {host} is neither localhost nor an address of this machine. Write localhost for this machine only, "
                + "an address such as 192.168.1.20, or * for everyone who can reach this machine.";
    }

    /// <summary>Whether only this machine can reach that address.</summary>
    /// <param name="url">Such as <c>http://127.0.0.1:5080</c>.</param>
    public static bool IsLoopback(string url) =>
        Host(url) is { } host && (IsThis(host) || (IPAddress.TryParse(host, out IPAddress? ip) && IPAddress.IsLoopback(ip)));

    /// <summary>Whether it is https, which takes a certificate.</summary>
    /// <param name="url">Such as <c>https://localhost:5443</c>.</param>
    public static bool IsSecure(string url)
    {
        ArgumentNullException.ThrowIfNull(url);
        return url.StartsWith("https://", StringComparison.Ordinal);
    }

    /// <summary>What one may type to get there: the address itself, or one for each name where it means every interface.</summary>
    /// <param name="url">Where the site listens.</param>
    /// <param name="names">Names and addresses of this machine.</param>
    public static IEnumerable<string> Reached(string url, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        BindingAddress address = BindingAddress.Parse(url);
        return Every.Contains(address.Host) || (IPAddress.TryParse(address.Host, out IPAddress? ip) && (ip.Equals(IPAddress.Any) || ip.Equals(IPAddress.IPv6Any)))
            ? names.Select(name => Invariant($"{address.Scheme}://{(name.Contains(':', StringComparison.Ordinal) ? $"[{name}]" : name)}:{address.Port}"))
            : [url];
    }

    private static bool IsThis(string host) => host.Equals(This, StringComparison.OrdinalIgnoreCase);

    private static string? Host(string url)
    {
        try
        {
            BindingAddress address = BindingAddress.Parse(url);
            return address.IsUnixPipe || address.IsNamedPipe ? null : address.Host.Trim('[', ']');
        }
        catch (FormatException)
        {
            return null;
        }
    }
}
