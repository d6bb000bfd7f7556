using System.Security.Claims;
using Bunit;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Hosting.Entry;
using Gylebook.Web.Layout;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Hosting;

/// <summary>An open page goes from one to the next without the server's gate: who may see which is asked there, too.</summary>
public sealed class RoutesTests : GylebookTestContext
{
    /// <summary>Every page there is, with something in the places of its address.</summary>
    public static TheoryData<string> Addresses() =>
        [.. typeof(Routes).Assembly.GetTypes()
            .SelectMany(page => page.GetCustomAttributes(typeof(RouteAttribute), inherit: false).Cast<RouteAttribute>())
            .Select(route => route.Template.Replace("{Id:guid}", Guid.Empty.ToString(), StringComparison.Ordinal).Replace("{Recipe:guid}", Guid.Empty.ToString(), StringComparison.Ordinal).Replace("{SheetId:guid}", Guid.Empty.ToString(), StringComparison.Ordinal).Replace("{FoodId}", "milk-chocolate", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Addresses))]
    public void A_helper_gets_to_brew_days_pages_alone_and_a_stranger_to_none(string address)
    {
        string[] forHelpers = ["/gyles", $"/gyles/{Guid.Empty}", $"/gyles/{Guid.Empty}/brew", "/error", "/not-found"];

        Assert.Equal(!forHelpers.Contains(address), Open(Who.WithPassword(Who.Helper, "", "test"), address).Markup.Contains(Who.OwnerAlone, StringComparison.Ordinal));
        Assert.Contains("Say the password", Open(new ClaimsPrincipal(new ClaimsIdentity()), address).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_helper_who_goes_on_in_an_open_page_is_stopped_and_the_owner_is_not()
    {
        IRenderedComponent<Routes> helper = Open(Who.WithPassword(Who.Helper, "", "test"), "/gyles");
        Assert.True(helper.HasComponent<GylesPage>());
        Assert.Equal(["Gyles"], helper.FindAll("nav a").Select(way => way.TextContent));

        Services.GetRequiredService<NavigationManager>().NavigateTo("/kits");
        helper.WaitForAssertion(() => Assert.Contains(Who.OwnerAlone, helper.Markup, StringComparison.Ordinal));
        Assert.False(helper.HasComponent<KitsPage>());

        IRenderedComponent<Routes> owner = Open(Who.AtThisMachine(), "/kits");
        Assert.True(owner.HasComponent<KitsPage>());
        Assert.Empty(owner.FindAll("nav form"));
    }

    private IRenderedComponent<Routes> Open(ClaimsPrincipal who, string address)
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        return Render<Routes>(with => with.AddCascadingValue(Task.FromResult(new AuthenticationState(who))));
    }
}
