using Practice.TestSupport;

namespace Practice.E2E.Tests.People;

/// <summary>The application as it is after installing: nobody works there yet.</summary>
public sealed class FreshApp(PostgresServer server) : AppFixture(server)
{
    protected override bool IsDemo => false;
}
