using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>Where one comes in, and all that is open to who has not.</summary>
public static class EntryPaths
{
    /// <summary>Asks for the password.</summary>
    public const string Enter = "/enter";

    /// <summary>Takes leave: this browser has to say the password again.</summary>
    public const string Leave = "/leave";

    /// <summary>Where the owner sets both passwords.</summary>
    public const string Passwords = "/passwords";

    /// <summary>Where to go after the password was said.</summary>
    public const string Back = "back";

    /// <summary>The list of what nobody is asked a password for. Whatever is not in it is asked for, an address that does not exist too.</summary>
    internal enum Exempt
    {
        /// <summary>The page that takes the password.</summary>
        SignIn,

        /// <summary>Styles, scripts and pictures that are the same for everybody who has the program.</summary>
        StaticFiles,

        /// <summary>Recipes that were given out.</summary>
        PublishedPages,

        /// <summary>Where devices send to, each with a token of its own, which is asked for there.</summary>
        Devices,
    }

    /// <summary>Lets everybody have it.</summary>
    /// <param name="open">What is mapped.</param>
    /// <param name="why">Which entry of the list it is.</param>
    internal static T OpenTo<T>(this T open, Exempt why)
        where T : IEndpointConventionBuilder => open.AllowAnonymous().WithMetadata(why);

    /// <summary>The page that takes the password, knowing where to go then.</summary>
    internal static string EnterAndBack(HttpRequest request) => $"{Enter}?{Back}={Uri.EscapeDataString(request.Path + request.QueryString)}";

    /// <summary>The way back, if it leads to a page of ours; else the first page, or a helper's.</summary>
    /// <param name="wanted">As it came with the form: anybody may have written it.</param>
    /// <param name="role">Who goes there.</param>
    internal static string BackTo(string? wanted, string role)
    {
        bool isOurs = wanted is ['/', ..] and not ['/', '/' or '\\', ..] && !wanted.Any(char.IsControl);
        return isOurs && !(role == Who.Helper && wanted == "/") ? wanted! : role == Who.Helper ? "/" + PageUrls.Gyles : "/";
    }
}
