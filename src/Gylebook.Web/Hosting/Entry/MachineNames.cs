using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>What this machine is called on its own network.</summary>
public static class MachineNames
{
    /// <summary>Its name, and that name as the local network may look it up (RFC 6762).</summary>
    public static IReadOnlyList<string> Names { get; } = NamesOf(Dns.GetHostName());

    /// <summary>Its addresses that others can call, those of a network with a way out first.</summary>
    public static IReadOnlyList<IPAddress> Addresses() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(card => card.OperationalStatus == OperationalStatus.Up && card.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .Select(card => card.GetIPProperties())
            .OrderBy(card => card.GatewayAddresses.Count == 0)
            .SelectMany(card => card.UnicastAddresses)
            .Select(unicast => unicast.Address)
            .Where(address => !address.IsIPv6LinkLocal && !IPAddress.IsLoopback(address))
            .OrderBy(address => address.AddressFamily != AddressFamily.InterNetwork)
            .Distinct(),
    ];

    /// <summary>A machine's name as one may call it.</summary>
    internal static IReadOnlyList<string> NamesOf(string name) =>
        name.Contains('.', StringComparison.Ordinal) ? [name, $"{name[..name.IndexOf('.', StringComparison.Ordinal)]}.local"] : [name, $"{name}.local"];
}
