using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Targets;

/// <summary>Own values among each other: one a target, the latest.</summary>
public static class TargetOverrides
{
    /// <summary>An own value for a target.</summary>
    public static TargetOverride For(
        Target target,
        decimal value,
        string by,
        Instant at,
        string reason
    )
    {
        ArgumentNullException.ThrowIfNull(target);
        var computed = target.Override is { } before ? before.Computed : target.Aim;
        return new(target.Key, value, computed, by, at, reason);
    }

    /// <summary>The latest own value for a target, beside what is computed now; null when there is none.</summary>
    public static TargetOverride? Of(
        this ImmutableArray<TargetOverride> overrides,
        string key,
        decimal? computed
    ) =>
        overrides.Where(o => o.Key == key).MaxBy(o => o.At) is { } own
            ? own with
            {
                Computed = computed,
            }
            : null;

    /// <summary>The own values with one more, which replaces that of the same target.</summary>
    public static ImmutableArray<TargetOverride> With(
        this ImmutableArray<TargetOverride> overrides,
        TargetOverride own
    )
    {
        ArgumentNullException.ThrowIfNull(own);
        return [.. overrides.Without(own.Key), own];
    }

    /// <summary>The own values without that of a target: what is computed counts again.</summary>
    public static ImmutableArray<TargetOverride> Without(
        this ImmutableArray<TargetOverride> overrides,
        string key
    ) => [.. overrides.Where(o => o.Key != key)];
}
