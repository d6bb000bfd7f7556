using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>How often a password may be tried: so often from one address, and so often from all together. Common practice, no source.</summary>
internal static class EntryTries
{
    /// <summary>The policy of addresses that take a password.</summary>
    public const string Policy = "tries";

    /// <summary>Tries in a minute from one address.</summary>
    public const int OfOne = 5;

    /// <summary>Tries in a minute from everybody.</summary>
    public const int OfAll = 30;

    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    public static void Limit(IServiceCollection services) => services.AddRateLimiter(limits =>
    {
        limits.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        limits.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context =>
            context.GetEndpoint()?.Metadata.GetMetadata<EnableRateLimitingAttribute>()?.PolicyName == Policy ? Fixed("all", OfAll) : RateLimitPartition.GetNoLimiter(""));
        limits.AddPolicy(Policy, context => Fixed(Caller(context.Connection.RemoteIpAddress), OfOne));
        limits.OnRejected = async (refused, cancellation) =>
        {
            HttpResponse answer = refused.HttpContext.Response;
            TimeSpan wait = refused.Lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan after) ? after : Window;
            int seconds = (int)Math.Ceiling(wait.TotalSeconds);
            answer.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
            await PlainAnswer.WriteAsync(refused.HttpContext, StatusCodes.Status429TooManyRequests, Invariant($"Too many tries. Wait {seconds} seconds, then try again."));
        };
    });

    private static RateLimitPartition<string> Fixed(string who, int tries) =>
        RateLimitPartition.GetFixedWindowLimiter(who, _ => new FixedWindowRateLimiterOptions { PermitLimit = tries, Window = Window });

    /// <summary>One caller is an address of IPv4, or all 2^64 of an IPv6 network, which one machine may have.</summary>
    internal static string Caller(IPAddress? address)
    {
        address = address is { IsIPv4MappedToIPv6: true } ? address.MapToIPv4() : address;
        return address is { AddressFamily: AddressFamily.InterNetworkV6 }
            ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8))
            : address?.ToString() ?? "";
    }
}
