using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Authorization.Policy;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>What somebody gets who may not have what they asked for: the way to the password, or a status and a sentence.</summary>
internal sealed class EntryAnswers : IAuthorizationMiddlewareResultHandler
{
    /// <summary>Addresses that scripts and programs ask, which would take the page with the password for their answer.</summary>
    private static readonly PathString[] ForPrograms = ["/api", "/_blazor", "/_framework", "/files"];

    /// <inheritdoc/>
    public Task HandleAsync(RequestDelegate next, HttpContext context, AuthorizationPolicy policy, PolicyAuthorizationResult authorizeResult)
    {
        if (authorizeResult.Succeeded)
        {
            return next(context);
        }

        if (context.Features.Get<IExceptionHandlerFeature>() is not null)
        {
            // The page that tells a fault is not for everybody; that there was one is.
            return PlainAnswer.WriteAsync(context, StatusCodes.Status500InternalServerError, "Something went wrong. The terminal in which Gylebook runs says more.");
        }

        if (authorizeResult.Forbidden)
        {
            return PlainAnswer.WriteAsync(context, StatusCodes.Status403Forbidden, Who.OwnerAlone);
        }

        if (!HttpMethods.IsGet(context.Request.Method) || Array.Exists(ForPrograms, path => context.Request.Path.StartsWithSegments(path)))
        {
            return PlainAnswer.WriteAsync(context, StatusCodes.Status401Unauthorized, "This book asks for its password. Open its first page and say it there.");
        }

        context.Response.Redirect(EntryPaths.EnterAndBack(context.Request));
        return Task.CompletedTask;
    }
}
