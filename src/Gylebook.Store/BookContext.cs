using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Gylebook.Store;

/// <summary>The rows of the book. One context per operation; pages and commands go through <see cref="Book"/>.</summary>
public sealed class BookContext(DbContextOptions<BookContext> options) : DbContext(options)
{
    /// <summary>Rows that are written once: the database itself refuses to change or delete them.</summary>
    public static IReadOnlyList<string> AppendOnlyTables { get; } =
        ["edits", "versions", "plans", "readings", "actions", "sensor_rows"];

    public DbSet<RecipeRow> Recipes => Set<RecipeRow>();

    public DbSet<DraftRow> Drafts => Set<DraftRow>();

    public DbSet<EditRow> Edits => Set<EditRow>();

    public DbSet<VersionRow> Versions => Set<VersionRow>();

    public DbSet<PublicationRow> Publications => Set<PublicationRow>();

    public DbSet<ErratumRow> Errata => Set<ErratumRow>();

    public DbSet<KitRow> Kits => Set<KitRow>();

    public DbSet<FoodRow> Foods => Set<FoodRow>();

    public DbSet<WaterRow> Waters => Set<WaterRow>();

    public DbSet<LarderSheetRow> LarderSheets => Set<LarderSheetRow>();

    public DbSet<GyleRow> Gyles => Set<GyleRow>();

    public DbSet<PlanRow> Plans => Set<PlanRow>();

    public DbSet<PortionRow> Portions => Set<PortionRow>();

    public DbSet<StayRow> Stays => Set<StayRow>();

    public DbSet<ReadingRow> Readings => Set<ReadingRow>();

    public DbSet<ActionRow> Actions => Set<ActionRow>();

    public DbSet<DeviceRow> Devices => Set<DeviceRow>();

    public DbSet<DevicePlaceRow> DevicePlaces => Set<DevicePlaceRow>();

    public DbSet<SensorRow> SensorRows => Set<SensorRow>();

    public DbSet<SettingRow> Settings => Set<SettingRow>();

    /// <inheritdoc/>
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        RowChecksum.Seal(ChangeTracker);
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc/>
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        RowChecksum.Seal(ChangeTracker);
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
        configurationBuilder.Properties<DateOnly>().HaveConversion<DayNumber>();
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        MapRecipes(modelBuilder);
        MapPublications(modelBuilder);
        MapLog(modelBuilder);
        MapSheets(modelBuilder);
        MapGyles(modelBuilder);
        MapDevices(modelBuilder);
        SnakeCase.Apply(modelBuilder);
    }

    private static void MapRecipes(ModelBuilder model)
    {
        model.Entity<RecipeRow>(recipe =>
        {
            recipe.HasIndex(r => r.Name);
            recipe.HasIndex(r => r.UpdatedTicks);
            recipe.HasOne(r => r.Draft).WithOne(d => d.Recipe).HasForeignKey<DraftRow>(d => d.RecipeId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<DraftRow>(draft =>
        {
            draft.HasKey(d => d.RecipeId);
            draft.Property(d => d.Revision).IsConcurrencyToken();
            // For lists: without it, each row would have its long document read to get at the number behind it.
            draft.HasIndex(d => new { d.RecipeId, d.Revision });
            draft.HasOne<EditRow>().WithMany().HasForeignKey(d => d.EditId).OnDelete(DeleteBehavior.Restrict);
        });
    }

    private static void MapPublications(ModelBuilder model)
    {
        model.Entity<PublicationRow>(publication =>
        {
            publication.HasKey(p => p.RecipeId);
            publication.HasIndex(p => p.Slug).IsUnique();
            publication.HasOne<RecipeRow>().WithOne().HasForeignKey<PublicationRow>(p => p.RecipeId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<ErratumRow>(erratum =>
        {
            erratum.HasIndex(e => e.RecipeId);
            erratum.HasOne<RecipeRow>().WithMany().HasForeignKey(e => e.RecipeId).OnDelete(DeleteBehavior.Restrict);
        });
    }

    /// <summary>Edits and versions belong to a row of any noun, which no foreign key can say.</summary>
    private static void MapLog(ModelBuilder model)
    {
        model.Entity<EditRow>(edit =>
        {
            edit.HasIndex(e => new { e.OwnerId, e.ParentId });
            edit.HasOne<EditRow>().WithMany().HasForeignKey(e => e.ParentId).OnDelete(DeleteBehavior.Restrict);
            edit.HasOne<EditRow>().WithMany().HasForeignKey(e => e.BaseId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<VersionRow>(version =>
        {
            version.HasKey(v => new { v.OwnerId, v.Number });
            version.Property(v => v.Reason).HasConversion<string>();
        });
    }

    private static void MapSheets(ModelBuilder model)
    {
        MapSheet<KitRow>(model);
        MapSheet<FoodRow>(model);
        model.Entity<FoodRow>().HasIndex(f => f.FoodId);
        MapSheet<WaterRow>(model);
        model.Entity<WaterRow>(water =>
        {
            water.HasIndex(w => w.RecipeId).IsUnique().HasFilter("recipe_id IS NOT NULL AND deleted_ticks IS NULL");
            water.HasOne<RecipeRow>().WithMany().HasForeignKey(w => w.RecipeId).OnDelete(DeleteBehavior.Restrict);
        });
        MapSheet<LarderSheetRow>(model);
        model.Entity<LarderSheetRow>().HasIndex(s => new { s.Form, s.SheetId });
        model.Entity<SettingRow>().HasKey(s => s.Key);
    }

    private static void MapSheet<TRow>(ModelBuilder model)
        where TRow : SheetRow
    {
        model.Entity<TRow>(sheet =>
        {
            sheet.HasIndex(s => s.Name);
            sheet.HasIndex(s => s.UpdatedTicks);
            sheet.Property(s => s.Revision).IsConcurrencyToken();
            sheet.HasOne<EditRow>().WithMany().HasForeignKey(s => s.EditId).OnDelete(DeleteBehavior.Restrict);
        });
    }

    private static void MapGyles(ModelBuilder model)
    {
        model.Entity<GyleRow>(gyle =>
        {
            gyle.HasIndex(g => g.UpdatedTicks);
            gyle.Property(g => g.Status).HasConversion<string>();
            gyle.HasOne<RecipeRow>().WithMany().HasForeignKey(g => g.RecipeId).OnDelete(DeleteBehavior.Restrict);
            gyle.HasOne<VersionRow>().WithMany().HasForeignKey(g => new { g.RecipeId, g.VersionNumber }).OnDelete(DeleteBehavior.Restrict);
            gyle.HasOne<KitRow>().WithMany().HasForeignKey(g => g.KitId).OnDelete(DeleteBehavior.Restrict);
            gyle.HasMany(g => g.Portions).WithOne().HasForeignKey(p => p.GyleId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<PlanRow>(plan =>
        {
            plan.HasKey(p => p.GyleId);
            plan.HasOne<GyleRow>().WithOne().HasForeignKey<PlanRow>(p => p.GyleId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<GyleRow>().HasMany(g => g.Stays).WithOne().HasForeignKey(s => s.GyleId).OnDelete(DeleteBehavior.Restrict);
        model.Entity<StayRow>().Property(s => s.Kind).HasConversion<string>();
        model.Entity<PortionRow>().HasIndex(p => new { p.GyleId, p.Name }).IsUnique();
        model.Entity<ReadingRow>(reading =>
        {
            reading.HasIndex(r => new { r.PortionId, r.AtTicks });
            reading.HasIndex(r => r.EntryId).IsUnique().HasFilter("entry_id IS NOT NULL");
            reading.HasIndex(r => r.ReplacesId).HasFilter("replaces_id IS NOT NULL");
            reading.HasOne<PortionRow>().WithMany().HasForeignKey(r => r.PortionId).OnDelete(DeleteBehavior.Restrict);
            reading.HasOne<ReadingRow>().WithMany().HasForeignKey(r => r.ReplacesId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<ActionRow>(action =>
        {
            action.Property(a => a.Kind).HasConversion<string>();
            action.HasIndex(a => new { a.PortionId, a.AtTicks });
            action.HasIndex(a => a.Lot).HasFilter("lot IS NOT NULL");
            action.HasIndex(a => a.EntryId).IsUnique().HasFilter("entry_id IS NOT NULL");
            action.HasIndex(a => a.ReplacesId).HasFilter("replaces_id IS NOT NULL");
            action.HasOne<PortionRow>().WithMany().HasForeignKey(a => a.PortionId).OnDelete(DeleteBehavior.Restrict);
            action.HasOne<ActionRow>().WithMany().HasForeignKey(a => a.ReplacesId).OnDelete(DeleteBehavior.Restrict);
        });
    }

    /// <summary>A day as its number since 1 January of year 1: sorts, compares and never meets a time zone.</summary>
    private sealed class DayNumber() : ValueConverter<DateOnly, int>(day => day.DayNumber, number => DateOnly.FromDayNumber(number));

    private static void MapDevices(ModelBuilder model)
    {
        model.Entity<DeviceRow>(device =>
        {
            device.Property(d => d.Kind).HasConversion<string>();
            device.HasIndex(d => d.TokenHash).IsUnique().HasFilter("token_hash IS NOT NULL");
        });
        model.Entity<DevicePlaceRow>(place =>
        {
            place.HasIndex(p => p.PortionId);
            place.HasIndex(p => new { p.DeviceId, p.FromTicks });
            place.HasIndex(p => p.DeviceId).IsUnique().HasFilter("until_ticks IS NULL");
            place.HasOne<DeviceRow>().WithMany().HasForeignKey(p => p.DeviceId).OnDelete(DeleteBehavior.Restrict);
            place.HasOne<PortionRow>().WithMany().HasForeignKey(p => p.PortionId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<SensorRow>(row =>
        {
            // The row is its key's own leaf (WITHOUT ROWID): the migration says so by hand.
            row.HasKey(r => new { r.DeviceId, r.AtTicks, r.SentKey });
            row.HasIndex(r => new { r.DeviceId, r.SentId }).IsUnique().HasFilter("sent_id IS NOT NULL");
            row.HasOne<DeviceRow>().WithMany().HasForeignKey(r => r.DeviceId).OnDelete(DeleteBehavior.Restrict);
        });
    }

    /// <summary>An instant as whole UTC ticks: sorts, compares and never meets a time zone.</summary>
    private sealed class UtcTicks() : ValueConverter<DateTimeOffset, long>(
        instant => instant.UtcTicks, ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
}
