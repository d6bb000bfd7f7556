using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>What the book remembers about itself and its brewer: units, the demo, devices.</summary>
public sealed class BookSettings
{
    private readonly BookAccess _access;

    internal BookSettings(BookAccess access) => _access = access;

    /// <summary>All settings.</summary>
    public Task<Dictionary<string, string>> ListAsync(CancellationToken cancellation = default) =>
        _access.ReadAsync(
            context => context.Settings.ToDictionaryAsync(s => s.Key, s => s.Value, cancellation), cancellation);

    /// <summary>One setting; null when it was never made.</summary>
    public Task<string?> FindAsync(string key, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            context => context.Settings.Where(s => s.Key == key).Select(s => s.Value).SingleOrDefaultAsync(cancellation),
            cancellation);

    /// <summary>Makes or changes a setting.</summary>
    public async Task SetAsync(string key, string value, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(key);
        await _access.WriteAsync(
            async context =>
            {
                await SetAsync(context, key, value, _access.Now, cancellation);
                return true;
            },
            cancellation);
        _access.Changes.Tell(new BookChange(BookNoun.Setting, Guid.Empty, 0, null));
    }

    internal static async Task SetAsync(
        BookContext context, string key, string value, DateTimeOffset now, CancellationToken cancellation)
    {
        SettingRow? setting = await context.Settings.FindAsync([key], cancellation);
        setting ??= context.Settings.Add(new SettingRow { Key = key, Value = value }).Entity;
        setting.Value = value;
        setting.UpdatedTicks = now;
    }
}
