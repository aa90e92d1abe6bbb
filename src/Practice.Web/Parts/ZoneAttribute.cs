using System.ComponentModel.DataAnnotations;
using NodaTime;

namespace Practice.Web.Parts;

/// <summary>The key of a time zone there is.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ZoneAttribute : ValidationAttribute
{
    public ZoneAttribute()
        : base("No such time zone. Type it like Europe/London.") { }

    public override bool IsValid(object? value) =>
        value is null or ""
        || value is string key && DateTimeZoneProviders.Tzdb.GetZoneOrNull(key) is not null;
}
