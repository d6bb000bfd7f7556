using System.Security.Claims;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>Who may do what: the owner everything, a helper what belongs to brew day.</summary>
public static class Who
{
    /// <summary>Whose book it is.</summary>
    public const string Owner = "owner";

    /// <summary>Somebody who lends a hand on brew day: looks at gyles, taps and reads, and changes nothing else.</summary>
    public const string Helper = "helper";

    /// <summary>The policy of pages and addresses that belong to brew day. All that names no policy is the owner's.</summary>
    public const string OnBrewDay = "on brew day";

    /// <summary>What an answer says to a helper who asks for more.</summary>
    public const string OwnerAlone = "This belongs to the owner of the book. A helper may look at gyles, and tap and read on brew day.";

    /// <summary>How somebody came in who was asked for no password.</summary>
    private const string Unasked = "this machine";

    private const string Stamp = "stamp";

    /// <summary>Who sits at this machine, where nobody else can reach the book.</summary>
    public static ClaimsPrincipal AtThisMachine() => new(new ClaimsIdentity([new(ClaimTypes.Role, Owner)], Unasked));

    /// <summary>Who has said the password.</summary>
    /// <param name="role"><see cref="Owner"/> or <see cref="Helper"/>.</param>
    /// <param name="stamp">What changes when the password does.</param>
    /// <param name="scheme">How they came in.</param>
    public static ClaimsPrincipal WithPassword(string role, string stamp, string scheme) =>
        new(new ClaimsIdentity([new(ClaimTypes.Role, role), new(Stamp, stamp)], scheme));

    /// <summary>Whether they were asked for a password.</summary>
    public static bool WasAsked(ClaimsPrincipal who) => who?.Identity is { IsAuthenticated: true, AuthenticationType: not Unasked };

    /// <summary>What they are; null for nobody we know.</summary>
    public static string? RoleOf(ClaimsPrincipal who) =>
        who is null ? null : who.IsInRole(Owner) ? Owner : who.IsInRole(Helper) ? Helper : null;

    /// <summary>The stamp they came in with.</summary>
    public static string? StampOf(ClaimsPrincipal who) => who?.FindFirst(Stamp)?.Value;
}
