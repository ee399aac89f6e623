import { describe, expect, it, vi } from 'vitest';
import { near } from './near';

describe('a long list', () => {
  it('is drawn on once a frame while its end is near, and no further', () => {
    let tell: (here: boolean) => void = () => undefined;
    let given: IntersectionObserverInit | undefined;
    vi.stubGlobal(
      'IntersectionObserver',
      class {
        constructor(seen: (entries: { isIntersecting: boolean }[]) => void, init: IntersectionObserverInit) {
          tell = (isIntersecting) => seen([{ isIntersecting }]);
          given = init;
        }
        observe = vi.fn();
        disconnect = vi.fn();
      },
    );
    const frames: (() => void)[] = [];
    vi.stubGlobal('requestAnimationFrame', (work: () => void) => frames.push(work));
    vi.stubGlobal('cancelAnimationFrame', vi.fn());
    const frame = (): void => {
      frames.shift()?.();
    };
    const outer = document.createElement('div');
    outer.style.overflowY = 'auto';
    const node = outer.appendChild(document.createElement('button'));
    document.body.append(outer);
    const reached = vi.fn();
    const action = near(node, reached);
    expect(given?.root, 'the margin is added to what scrolls').toBe(outer);
    expect(frames).toHaveLength(0);
    tell(true);
    tell(true);
    frame();
    frame();
    expect(reached).toHaveBeenCalledTimes(2);
    tell(false);
    frame();
    expect(reached).toHaveBeenCalledTimes(2);
    expect(frames, 'nothing goes on while it is far').toHaveLength(0);
    tell(true);
    expect(frames).toHaveLength(1);
    action.destroy();
    expect(cancelAnimationFrame).toHaveBeenCalled();
  });
});
