using System.Reflection;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Tests;

/// <summary>Makes components whose drawing is counted, by their names.</summary>
internal sealed class DrawCounts : IComponentActivator
{
    // A component draws by one delegate, made in its constructor; bUnit's own count goes up for its ancestors too.
    private static readonly FieldInfo Drawing = typeof(ComponentBase).GetField("_renderFragment", BindingFlags.NonPublic | BindingFlags.Instance)
        ?? throw new MissingFieldException(nameof(ComponentBase), "_renderFragment");

    private readonly Dictionary<string, int> _drawn = [];

    /// <summary>How often components of each name were drawn since they were asked for last.</summary>
    public Dictionary<string, int> Take()
    {
        lock (_drawn)
        {
            Dictionary<string, int> taken = new(_drawn);
            _drawn.Clear();
            return taken;
        }
    }

    /// <inheritdoc/>
    public IComponent CreateInstance(Type componentType)
    {
        var component = (IComponent)Activator.CreateInstance(componentType)!;
        if (component is ComponentBase)
        {
            var own = (RenderFragment)Drawing.GetValue(component)!;
            Drawing.SetValue(component, (RenderFragment)(builder =>
            {
                Count(componentType.Name);
                own(builder);
            }));
        }

        return component;
    }

    private void Count(string name)
    {
        lock (_drawn)
        {
            _drawn[name] = _drawn.GetValueOrDefault(name) + 1;
        }
    }
}
