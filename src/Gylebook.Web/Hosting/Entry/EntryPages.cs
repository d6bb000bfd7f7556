using System.Security.Claims;
using Gylebook.Web.Features.Entry;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>Coming in, leaving, and the passwords themselves: plain forms that hold no connection and keep nothing in the browser.</summary>
internal static class EntryPages
{
    private const string Scheme = CookieAuthenticationDefaults.AuthenticationScheme;

    private const string Password = "password";

    /// <summary>Answers the addresses of <see cref="EntryPaths"/>.</summary>
    public static void Map(WebApplication site)
    {
        site.MapGet(EntryPaths.Enter, AskAsync).OpenTo(EntryPaths.Exempt.SignIn);
        site.MapPost(EntryPaths.Enter, EnterAsync).OpenTo(EntryPaths.Exempt.SignIn).RequireRateLimiting(EntryTries.Policy);
        site.MapPost(EntryPaths.Leave, LeaveAsync).RequireAuthorization(Who.OnBrewDay);
        site.MapGet(EntryPaths.Passwords, (HttpContext context, Passwords passwords) => ShowAsync(context, passwords, null, StatusCodes.Status200OK));
        site.MapPost(EntryPaths.Passwords, ChangeAsync).RequireRateLimiting(EntryTries.Policy);
    }

    private static async Task<IResult> AskAsync(HttpContext context, Passwords passwords) =>
        Who.RoleOf(context.User) is { } role ? Results.LocalRedirect(EntryPaths.BackTo(context.Request.Query[EntryPaths.Back], role))
            : await AskAgainAsync(context, passwords, context.Request.Query[EntryPaths.Back], null, StatusCodes.Status200OK);

    private static async Task<IResult> EnterAsync(HttpContext context, Passwords passwords, FirstUse first, IAntiforgery forms)
    {
        if (await FormAsync(context, forms) is not { } form)
        {
            return await AskAgainAsync(context, passwords, context.Request.Query[EntryPaths.Back], "This page was too old. Try once more.", StatusCodes.Status400BadRequest);
        }

        string? back = form[EntryPaths.Back];
        string password = form[Password].ToString();
        if (!await passwords.HasOwnerAsync(context.RequestAborted))
        {
            if (!first.IsCode(form["code"].ToString()))
            {
                return await AskAgainAsync(context, passwords, back, "That is not the code which the terminal printed.", StatusCodes.Status401Unauthorized);
            }

            if (await passwords.SetAsync(Who.Owner, password, context.RequestAborted) is { } fault)
            {
                return await AskAgainAsync(context, passwords, back, fault, StatusCodes.Status400BadRequest);
            }
        }

        if (await passwords.RoleOfAsync(password, context.RequestAborted) is not { } role)
        {
            return await AskAgainAsync(context, passwords, back, "That is not the password.", StatusCodes.Status401Unauthorized);
        }

        await SignInAsync(context, passwords, role);
        return Results.LocalRedirect(EntryPaths.BackTo(back, role));
    }

    private static async Task LeaveAsync(HttpContext context)
    {
        await context.SignOutAsync(Scheme);
        context.Response.Redirect(EntryPaths.Enter);
    }

    private static async Task<IResult> ChangeAsync(HttpContext context, Passwords passwords, IAntiforgery forms)
    {
        if (await FormAsync(context, forms) is not { } form)
        {
            return await ShowAsync(context, passwords, "This page was too old. Try once more.", StatusCodes.Status400BadRequest);
        }

        // A browser that was left open must not be enough to lock its owner out.
        if (await AsksAsync(context.User, passwords) && await passwords.RoleOfAsync(form["now"].ToString(), context.RequestAborted) != Who.Owner)
        {
            return await ShowAsync(context, passwords, "Not changed: that is not your password.", StatusCodes.Status401Unauthorized);
        }

        string role = form["whose"] == Who.Helper ? Who.Helper : Who.Owner;
        if (role == Who.Helper && form["does"] == "remove")
        {
            await passwords.RemoveHelperAsync(context.RequestAborted);
            return await ShowAsync(context, passwords, "No helper comes in any more.", StatusCodes.Status200OK);
        }

        if (await passwords.SetAsync(role, form[Password].ToString(), context.RequestAborted) is { } fault)
        {
            return await ShowAsync(context, passwords, $"Not changed: {fault}", StatusCodes.Status400BadRequest);
        }

        if (role == Who.Owner && Who.WasAsked(context.User))
        {
            await SignInAsync(context, passwords, role);
        }

        return await ShowAsync(context, passwords, role == Who.Helper ? "The helper's password is set." : "Your password is set. Other browsers have to say it anew.", StatusCodes.Status200OK);
    }

    private static async Task<bool> AsksAsync(ClaimsPrincipal who, Passwords passwords) => Who.WasAsked(who) && await passwords.HasOwnerAsync();

    private static async Task SignInAsync(HttpContext context, Passwords passwords, string role) => await context.SignInAsync(
        Scheme,
        Who.WithPassword(role, await passwords.StampAsync(role, context.RequestAborted) ?? "", Scheme),
        new AuthenticationProperties { IsPersistent = true });

    /// <summary>The form that was sent from a page of ours; null for any other.</summary>
    private static async Task<IFormCollection?> FormAsync(HttpContext context, IAntiforgery forms) =>
        context.Request.HasFormContentType && await forms.IsRequestValidAsync(context) ? await context.Request.ReadFormAsync(context.RequestAborted) : null;

    private static async Task<IResult> AskAgainAsync(HttpContext context, Passwords passwords, string? back, string? said, int status) =>
        Page<EnterPage>(context, status, new()
        {
            [nameof(EnterPage.IsFirst)] = !await passwords.HasOwnerAsync(context.RequestAborted),
            [nameof(EnterPage.Back)] = back,
            [nameof(EnterPage.Said)] = said,
        });

    private static async Task<IResult> ShowAsync(HttpContext context, Passwords passwords, string? said, int status) =>
        Page<PasswordsPage>(context, status, new()
        {
            [nameof(PasswordsPage.HasOwner)] = await passwords.HasOwnerAsync(context.RequestAborted),
            [nameof(PasswordsPage.HasHelper)] = await passwords.HasHelperAsync(context.RequestAborted),
            [nameof(PasswordsPage.AsksNow)] = await AsksAsync(context.User, passwords),
            [nameof(PasswordsPage.Said)] = said,
        });

    private static RazorComponentResult<T> Page<T>(HttpContext context, int status, Dictionary<string, object?> with)
        where T : Microsoft.AspNetCore.Components.IComponent
    {
        context.Response.Headers.CacheControl = "no-store";
        return new RazorComponentResult<T>(with) { StatusCode = status };
    }
}
