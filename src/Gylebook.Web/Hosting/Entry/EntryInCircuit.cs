using Gylebook.Store;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>Who has a page open: whoever came in with a password that was changed since is out within a minute.</summary>
/// <param name="passwords">The passwords.</param>
/// <param name="logs">For the framework.</param>
internal sealed class EntryInCircuit(Passwords passwords, ILoggerFactory logs) : RevalidatingServerAuthenticationStateProvider(logs)
{
    /// <inheritdoc/>
    protected override TimeSpan RevalidationInterval => TimeSpan.FromMinutes(1);

    /// <inheritdoc/>
    protected override async Task<bool> ValidateAuthenticationStateAsync(AuthenticationState authenticationState, CancellationToken cancellationToken)
    {
        try
        {
            return !Who.WasAsked(authenticationState.User) || await passwords.MayStayAsync(authenticationState.User, cancellationToken);
        }
        catch (BookUnavailableException)
        {
            // A disk in trouble throws nobody out, whose typing may still be saved; asked again in a minute.
            return true;
        }
    }
}
