using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Features.Trouble;

/// <summary>What a person reads when a page could not be made: never a stack trace.</summary>
public sealed partial class ErrorPage
{
    private Exception? _fault;

    [CascadingParameter]
    private HttpContext? HttpContext { get; set; }

    /// <inheritdoc/>
    protected override void OnInitialized() => _fault = HttpContext?.Features.Get<IExceptionHandlerFeature>()?.Error;
}
