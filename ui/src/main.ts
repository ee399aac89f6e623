import { mount } from 'svelte';
import App from './App.svelte';
import { language } from './lib/language';
import './lib/look.css';

const target = document.getElementById('app');
if (!target) throw new Error('index.html has no #app to draw into');

document.documentElement.lang = language;
mount(App, { target });
