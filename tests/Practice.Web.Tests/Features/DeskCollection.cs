using Practice.TestSupport;

namespace Practice.Web.Tests.Features;

/// <summary>Page tests share one database server; tests of parts run without it.</summary>
[CollectionDefinition(Name)]
public sealed class DeskCollection : ICollectionFixture<PostgresServer>
{
    public const string Name = "desk";
}
